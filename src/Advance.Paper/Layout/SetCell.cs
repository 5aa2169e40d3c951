using Advance.Paper.Setting;
using Advance.Paper.Tree;

namespace Advance.Paper.Layout;

/// <summary>A cell with its text composed.</summary>
/// <param name="Column">Its first column.</param>
/// <param name="Span">How many columns it takes.</param>
/// <param name="Text">What it says.</param>
/// <param name="Align">Which edge of its room it keeps to.</param>
/// <param name="Verdict">How it fared.</param>
internal sealed record SetCell(int Column, int Span, SetText Text, Align Align, Verdict Verdict);
