using System.Diagnostics.CodeAnalysis;

namespace Advance.Reading.Phrases;

/// <summary>Reads a value at the cursor.</summary>
/// <returns>False where it is something else; then the cursor may hold the reason.</returns>
internal delegate bool Scan<T>(Cursor cursor, [MaybeNullWhen(false)] out T value);
