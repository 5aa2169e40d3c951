using Advance.Domain.Facts;

namespace Advance.Planning;

/// <summary>When a task is done, and by whom.</summary>
/// <param name="Start">When it starts.</param>
/// <param name="End">When it is done.</param>
/// <param name="Who">The one who leads first.</param>
internal sealed record Turn(Moment Start, Moment End, IReadOnlyList<string> Who);
