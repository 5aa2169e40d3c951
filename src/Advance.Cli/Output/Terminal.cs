namespace Advance.Cli.Output;

/// <summary>Where the program speaks: results go to one stream, complaints to the other.</summary>
internal sealed class Terminal(TextWriter results, TextWriter complaints)
{
    /// <summary>Prints a result, with a line end.</summary>
    public void Say(string text) => results.Write(text + "\n");

    /// <summary>Prints what is wrong, a line each, and what to do about it.</summary>
    public void Complain(IEnumerable<string> wrongs, string cure)
    {
        foreach (var wrong in wrongs)
        {
            complaints.Write($"advance: {wrong}\n");
        }

        complaints.Write($"  {cure}\n");
    }
}
