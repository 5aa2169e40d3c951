using Advance.Paper.Setting;
using Advance.Paper.Tree;

namespace Advance.Paper.Layout;

/// <summary>Sets lists: a dash or a number, and the item beside it.</summary>
internal static class ItemListSetter
{
    public static List<Strip> Set(ItemList list, int width, Room room)
    {
        var composer = room.Composer;
        var signs = new SetText[list.Items.Count];
        for (var i = 0; i < signs.Length; i++)
        {
            signs[i] = composer.Compose(list.Numbered ? $"{i + 1}." : "–", composer.Body);
        }

        var indent = signs.Max(s => (int?)s.Most) + (composer.Body.Size / 2) ?? 0;
        var group = room.NextGroup();
        var strips = new List<Strip>();
        for (var i = 0; i < signs.Length; i++)
        {
            var marks = new List<Mark>();
            signs[i].Fit(indent).Draw(marks, 0, 0, indent - (composer.Body.Size / 2), list.Numbered ? Align.Right : Align.Left);
            var lines = composer.Compose(list.Items[i], composer.Body).Fit(width - indent);
            lines.Draw(marks, indent, 0, width - indent, Align.Left);
            strips.Add(new Strip(Math.Max(lines.Height, TypeScale.Leading(composer.Body.Size)), marks)
            {
                Group = group,
                InGroup = i,
                GroupCount = signs.Length,
                Gap = i == 0 ? 0 : composer.Body.Size / 5,
            });
        }

        return strips;
    }
}
