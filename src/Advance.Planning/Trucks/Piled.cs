namespace Advance.Planning;

/// <summary>
/// Something that stands in a vehicle, and what stands on it, side by side along its longer side. It carries so many levels as the stock says
/// may stand on one another, and so much as those would weigh.
/// </summary>
/// <param name="bulk">What it takes up.</param>
/// <param name="kilograms">What it weighs; null where nobody knows, and then nothing stands on it.</param>
/// <param name="stacks">How many like it may stand on one another; null where the stock does not say, and then it stands alone.</param>
/// <param name="bottom">How high it stands, in metres.</param>
/// <param name="below">What it stands on; null for the floor.</param>
internal sealed class Piled(Bulk bulk, double? kilograms, int? stacks, double bottom = 0, Piled? below = null)
{
    private const double Slack = 1e-9;

    private readonly List<Piled> above = [];
    private double used;
    private double carried;

    /// <summary>What it covers, in m².</summary>
    public double Floor => bulk.Floor;

    /// <summary>Puts something on it, or on what stands on it already.</summary>
    /// <param name="other">What it takes up.</param>
    /// <param name="weight">In kilograms.</param>
    /// <param name="most">How many like it may stand on one another.</param>
    /// <param name="roof">How high the vehicle is inside, in metres.</param>
    /// <returns>False where nothing here takes it.</returns>
    public bool TryPut(Bulk other, double weight, int most, double roof)
    {
        if (above.Exists(piled => piled.TryPut(other, weight, most, roof)))
        {
            return true;
        }

        var side = Side(other);
        if (used + side > bulk.Long + Slack || bottom + bulk.Height + other.Height > roof + Slack || !Carries(weight, levels: 1))
        {
            return false;
        }

        used += side;
        above.Add(new Piled(other, weight, most, bottom + bulk.Height, this));
        Load(weight);
        return true;
    }

    // As little of the longer side as it can take, across which it must not stand over.
    private double Side(Bulk other) =>
        other.Long <= bulk.Short + Slack ? other.Short : other.Short <= bulk.Short + Slack ? other.Long : double.PositiveInfinity;

    private bool Carries(double weight, int levels) =>
        stacks is { } most && kilograms is { } own
        && levels < most && carried + weight <= ((most - 1) * own) + Slack
        && below?.Carries(weight, levels + 1) != false;

    private void Load(double weight)
    {
        carried += weight;
        below?.Load(weight);
    }
}
