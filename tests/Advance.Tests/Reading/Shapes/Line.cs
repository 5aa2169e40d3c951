using Advance.Domain.Facts;
using UnitsNet;

namespace Advance.Tests.Reading.Shapes;

internal sealed record Line(string Name, NumberRange Number, string Source, Given<Mass> Weight, IReadOnlyList<string> Tags, Mark At);
