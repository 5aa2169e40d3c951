using System.Runtime.InteropServices;
using Advance.Paper.Setting;

namespace Advance.Paper.Layout;

/// <summary>A word in a run.</summary>
/// <param name="Word">Its glyphs.</param>
/// <param name="X">Where it begins, from the beginning of the run.</param>
/// <param name="AfterSpace">True when a space stands before it.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct PlacedWord(ShapedWord Word, int X, bool AfterSpace);
