using Advance.Paper.Setting;
using Advance.Paper.Tree;

namespace Advance.Paper.Layout;

/// <summary>Sets a picture with its caption as one strip.</summary>
internal static class PictureBlocks
{
    public static List<Strip> Set(Picture picture, int width, Room room)
    {
        var caption = room.Composer.Compose(picture.Caption, room.Composer.Quiet).Fit(width);
        var space = caption.Count == 0 ? 0 : caption.Height + (room.Scale.Small / 2);
        var most = room.Height - space;
        if (picture.MostHeightMm is { } mm && double.IsFinite(mm))
        {
            most = Math.Min(most, Mil.FromMm(Math.Clamp(mm, 5, 2000)));
        }

        if (room.Pictures.Set(picture.Scene, width, most) is not { } set)
        {
            return [];
        }

        var marks = new List<Mark> { new PictureMark(set.Width, set.Height, set) };
        caption.Draw(marks, 0, set.Height + space - caption.Height, width, Align.Left);
        return [new Strip(set.Height + space, marks)];
    }
}
