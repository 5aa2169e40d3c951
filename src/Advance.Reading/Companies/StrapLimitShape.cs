using Advance.Domain.Companies;
using Advance.Reading.Shapes;

namespace Advance.Reading.Companies;

/// <summary>How far a stack may go without a strap.</summary>
internal static class StrapLimitShape
{
    public static readonly RecordShape<StrapLimit> It = new("stack-strap", "How far a stack whose boxes are not joined may go without a strap.", keys =>
    {
        var limit = Policies.Default.StackStrap;
        var boxes = keys.Defaulted("boxes", Written.Between("strap-boxes", 1, 100), limit.Boxes, "At most so many boxes.", "2");
        var height = keys.Defaulted("height", Written.Length, limit.Height, "At most so high.", "1.5 m");
        return row => new StrapLimit(boxes(row), height(row));
    });
}
