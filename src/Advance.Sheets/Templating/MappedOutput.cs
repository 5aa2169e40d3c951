using System.Text;
using Scriban.Runtime;

namespace Advance.Sheets.Templating;

/// <summary>Takes what templates write, and remembers for each stretch of it which place wrote it.</summary>
/// <param name="start">The sheet's own template.</param>
/// <param name="most">How many UTF-16 units it takes.</param>
internal sealed class MappedOutput(Frame start, int most) : IScriptOutput
{
    private readonly StringBuilder text = new();
    private readonly List<Piece> pieces = [new Piece(0, start, 0, IsCopied: true)];

    /// <summary>The use of a template that writes at the moment.</summary>
    public Frame Frame { get; set; } = start;

    /// <summary>The place of the expression whose value is written next.</summary>
    public int ExpressionAt { get; set; }

    public SourceMap Map => new(pieces);

    public override string ToString() => text.ToString();

    /// <exception cref="StoppedException">The limit is reached: nothing is cut off in silence.</exception>
    public void Write(string text, int offset, int count)
    {
        if (this.text.Length + count > most)
        {
            throw new StoppedException($"The template was stopped: it writes more than {most} characters.");
        }

        // The engine copies a template's own words out of the template's own string, and an offset in it is a place in the source.
        var isCopied = ReferenceEquals(text, Frame.Source.Text);
        pieces.Add(new Piece(this.text.Length, Frame, isCopied ? offset : ExpressionAt, isCopied));
        this.text.Append(text, offset, count);
    }

    public ValueTask WriteAsync(string text, int offset, int count, CancellationToken cancellationToken)
    {
        Write(text, offset, count);
        return ValueTask.CompletedTask;
    }
}
