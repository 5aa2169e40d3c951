using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Domain.Places;
using UnitsNet;

namespace Advance.Planning;

/// <summary>One stack or one hang, on its side.</summary>
/// <param name="Address">Its name in the plan.</param>
/// <param name="Name">Its name on paper: <c>Main SR</c>.</param>
/// <param name="Stack">As written.</param>
/// <param name="Boxes">From the floor up, of a hang from the top down.</param>
/// <param name="FedBy">The port that feeds it; null where not said.</param>
/// <param name="RestsOn">The open questions about where it is.</param>
public sealed record StackPlan(
    Address Address, string Name, Stack Stack, IReadOnlyList<StackedBox> Boxes, Port? FedBy, Doubts RestsOn)
{
    /// <summary>The address that both stacks of a mirrored pair share: what is wrong with both is said once.</summary>
    public Address Written => Address.Of("sound") / Stack.Name;

    /// <summary>Whether it is flown.</summary>
    public bool IsHang => Stack.Flown is not null;

    /// <summary>Of a hang, the frame that its first box hangs under; null where none is written, and for a stack.</summary>
    public StackedBox? Frame { get; init; }

    /// <summary>Of a hang, what else is fixed to its frame.</summary>
    public IReadOnlyList<Piece> FixedToFrame { get; init; } = [];

    /// <summary>How high above the floor that is which it stands on or hangs over.</summary>
    public Figure<Length> Under { get; init; } = new(null, Doubts.None, Reason.Derived.It);

    /// <summary>Of a hang, how high the middle of each box is above that, as its leads are reckoned, in metres; empty for a stack.</summary>
    public IReadOnlyList<double> LeadHeights { get; init; } = [];

    /// <summary>Which side it is on; null for a stack without sides.</summary>
    public Side? Side { get; init; }

    /// <summary>0 for the first side as written, 1 for its twin.</summary>
    public int Index { get; init; }

    /// <summary>Where it stands; null where nobody knows.</summary>
    public Spot? Spot { get; init; }

    /// <summary>Which way it faces: degrees clockwise from straight downstage, seen from above with the audience at the foot of the page.</summary>
    public double Turn { get; init; }

    /// <summary>Where it and the stack before it are to arrive together; null where nobody knows.</summary>
    public Spot? HeardAt { get; init; }

    /// <summary>What it stands on.</summary>
    public Footing On { get; init; }

    /// <summary>How high above the floor it starts; of a hang its lowest edge, as far as it was said.</summary>
    public Figure<Length> Base { get; init; } = new(null, Doubts.None, Reason.Derived.It);

    /// <summary>How high the boxes are together, a plinth or a stand included.</summary>
    public Figure<Length> Height { get; init; } = new(null, Doubts.None, Reason.Derived.It);

    /// <summary>How high above the floor it ends.</summary>
    public Figure<Length> Top { get; init; } = new(null, Doubts.None, Reason.Derived.It);

    /// <summary>What all of it weighs, with margins: boxes, joints, pins, what lies under it.</summary>
    public Figure<Mass> Weight { get; init; } = new(null, Doubts.None, Reason.Derived.It);

    /// <summary>Its heaviest box, and how many lift it; null where nobody weighed one.</summary>
    public Lift? Lift { get; init; }

    /// <summary>Its boxes as they are fed, one chain for each output.</summary>
    public IReadOnlyList<Chain> Chains { get; init; } = [];

    /// <summary>Where one box stands on another, from the floor up; of a hang where one hangs from another, from its frame down.</summary>
    public IEnumerable<Interface> Interfaces => IsHang
        ? Hanging.Zip(Boxes.Skip(Frame is null ? 1 : 0), (upper, lower) => new Interface(lower, upper) { IsHanging = true })
        : Boxes.Zip(Boxes.Skip(1), (lower, upper) => new Interface(lower, upper));

    /// <summary>Its numbers, each under its address.</summary>
    public IReadOnlyList<Stated> Figures =>
    [
        .. IsHang ? [] : new[] { Stated.Of(Address / "height", $"{Name}, height of the boxes", Height), Stated.Of(Address / "top", $"{Name}, top above floor", Top) },
        Stated.Of(Address / "weight", $"{Name}, weight", Weight),
    ];

    private IEnumerable<StackedBox> Hanging => Frame is { } frame ? [frame, .. Boxes] : Boxes;
}
