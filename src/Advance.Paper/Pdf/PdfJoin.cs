using System.Buffers;
using System.Globalization;
using System.Text;

namespace Advance.Paper.Pdf;

/// <summary>Puts PDFs that the library wrote side by side together to one, page after page. Of a name that several give to a place, the first counts.</summary>
internal sealed class PdfJoin
{
    private readonly ArrayBufferWriter<byte> joined = new();
    private readonly List<int> starts = [0];
    private readonly PdfObjects first;

    private PdfJoin(PdfObjects first)
    {
        this.first = first;
        joined.Write(first.All);
        starts.AddRange(Enumerable.Range(1, first.Count - 1).Select(first.StartOf));
    }

    /// <summary>One PDF with the description of the first; null where one has another form than the library gives it.</summary>
    public static byte[]? Of(IReadOnlyList<byte[]> parts)
    {
        if (parts.Count == 1)
        {
            return parts[0];
        }

        var read = parts.Select(PdfObjects.Read).ToList();
        return read.Contains(null) || read.Exists(part => Referred(part!.Trailer.Catalog, "/Pages") is null) ? null : new PdfJoin(read[0]!).With(read[1..]!);
    }

    private byte[] With(List<PdfObjects> others)
    {
        var catalog = first.Trailer.Catalog;
        var pages = Referred(catalog, "/Pages")!.Value;
        var tree = first.DictionaryOf(pages);
        var count = Counted(tree);
        var names = new StringBuilder();
        var known = PlacesOf(first).Select(NameOf).ToHashSet(StringComparer.Ordinal);
        foreach (var other in others)
        {
            var renumbered = Append(other, pages);
            var theirs = Referred(other.Trailer.Catalog, "/Pages")!.Value;
            count += Counted(other.DictionaryOf(theirs));
            tree = tree.Insert(tree.IndexOf(']', StringComparison.Ordinal), string.Create(CultureInfo.InvariantCulture, $" {renumbered[theirs]} 0 R"));
            foreach (var place in PlacesOf(other).Where(place => known.Add(NameOf(place))))
            {
                names.Append('\n').Append(PdfObjects.Renumber(place, renumbered));
            }
        }

        var (from, to) = CountIn(tree);
        Rewrite(pages, string.Create(CultureInfo.InvariantCulture, $"{tree[..from]}{count}{tree[to..]}"));
        AddPlaces(names.ToString());
        return Finish();
    }

    // All but its catalogue and its description; its tree of pages hangs on that of the first.
    private int[] Append(PdfObjects other, int parent)
    {
        var (root, info, tree) = (other.Trailer.Root, Referred(other.Trailer.Info, "/Info"), Referred(other.Trailer.Catalog, "/Pages"));
        var renumbered = new int[other.Count];
        var next = starts.Count;
        foreach (var number in Enumerable.Range(1, other.Count - 1).Where(number => number != root && number != info))
        {
            renumbered[number] = next++;
        }

        foreach (var number in Enumerable.Range(1, other.Count - 1).Where(number => renumbered[number] > 0))
        {
            starts.Add(joined.WrittenCount);
            if (number == tree)
            {
                var body = PdfObjects.Renumber(other.DictionaryOf(number), renumbered);
                Write(renumbered[number], body.Insert(body.LastIndexOf(">>", StringComparison.Ordinal), string.Create(CultureInfo.InvariantCulture, $"\n/Parent {parent} 0 R")));
            }
            else
            {
                other.Copy(number, renumbered, joined);
            }
        }

        return renumbered;
    }

    private void AddPlaces(string names)
    {
        if (names.Length == 0)
        {
            return;
        }

        if (Referred(first.Trailer.Catalog, "/Dests") is { } places)
        {
            var own = first.DictionaryOf(places);
            Rewrite(places, own.Insert(own.LastIndexOf(">>", StringComparison.Ordinal), names));
            return;
        }

        var number = starts.Count;
        starts.Add(joined.WrittenCount);
        Write(number, $"<<{names}>>");
        var catalog = first.Trailer.Catalog;
        Rewrite(first.Trailer.Root, catalog.Insert(catalog.LastIndexOf(">>", StringComparison.Ordinal), string.Create(CultureInfo.InvariantCulture, $"\n/Dests {number} 0 R")));
    }

    // What stood there before stays in the file, and nothing leads to it.
    private void Rewrite(int number, string body)
    {
        starts[number] = joined.WrittenCount;
        Write(number, body);
    }

    private void Write(int number, string body) => joined.Write(Encoding.Latin1.GetBytes(string.Create(CultureInfo.InvariantCulture, $"{number} 0 obj\n{body}\nendobj\n")));

    private byte[] Finish()
    {
        var table = joined.WrittenCount;
        var end = new StringBuilder();
        end.Append(CultureInfo.InvariantCulture, $"xref\n0 {starts.Count}\n0000000000 65535 f \n");
        foreach (var start in starts.Skip(1))
        {
            end.Append(CultureInfo.InvariantCulture, $"{start:D10} 00000 n \n");
        }

        end.Append(CultureInfo.InvariantCulture, $"trailer\n<</Size {starts.Count}\n/Root {first.Trailer.Root} 0 R\n{first.Trailer.Info.TrimEnd('\n')}>>\nstartxref\n{table}\n%%EOF\n");
        joined.Write(Encoding.Latin1.GetBytes(end.ToString()));
        return joined.WrittenSpan.ToArray();
    }

    // Each in a line of its own: /name [2 0 R /XYZ 0 792 0].
    private static string[] PlacesOf(PdfObjects part) => Referred(part.Trailer.Catalog, "/Dests") is { } places ? part.DictionaryOf(places)[2..^2].Split('\n') : [];

    private static string NameOf(string place) => place[..place.IndexOf(' ', StringComparison.Ordinal)];

    private static int? Referred(string dictionary, string key)
    {
        var at = dictionary.IndexOf($"{key} ", StringComparison.Ordinal);
        var number = at < 0 ? default : dictionary.AsSpan(at + key.Length + 1);
        return number.IndexOf(" 0 R", StringComparison.Ordinal) is > 0 and var end && int.TryParse(number[..end], NumberStyles.None, CultureInfo.InvariantCulture, out var referred) ? referred : null;
    }

    private static (int From, int To) CountIn(string tree)
    {
        var from = tree.IndexOf("/Count ", StringComparison.Ordinal) + "/Count ".Length;
        var to = from;
        while (char.IsAsciiDigit(tree[to]))
        {
            to++;
        }

        return (from, to);
    }

    private static int Counted(string tree) => int.Parse(tree.AsSpan()[CountIn(tree).From..CountIn(tree).To], NumberStyles.None, CultureInfo.InvariantCulture);
}
