using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary>
/// What a line does that pulls a hang back: it takes a part of the weight, turns the nose down, and leans the chains. It pulls at the lower back edge of
/// the lowest box, up and to the rear.
/// </summary>
internal sealed class HangPull(string name, PullBack pull, HangFacts facts, Figure<Mass> weight)
{
    private readonly Figure<Mass> force = Figure.From(pull.Pull);
    private readonly Figure<Angle> up = Figure.From(pull.Up);

    /// <summary>What is not known of it, in words; null where all is.</summary>
    public string? Missing => force.Value is null || up.Value is null ? "how hard and how steeply it is pulled back"
        : facts.HasLowestBack ? null : "how deep its lowest box is, which it is pulled back by";

    /// <summary>What is left for the chains to carry.</summary>
    public Figure<Mass> Carried =>
        Sum.Of($"{name}, what the pull-back leaves", "V = W − P · sin(θ)", Statics.Equilibrium).Put("W", weight).Put("P", force).Put("θ", up)
            .Gives((all, back, slope) => all - (back * Math.Sin(slope.Radians)));

    /// <summary>How far the chains lean back for it.</summary>
    public Figure<Angle> Lean =>
        Sum.Of($"{name}, lean of its chains by the pull-back", "β = atan(P · cos(θ) / V)", Statics.Equilibrium).Put("P", force).Put("θ", up).Put("V", Carried)
            .Gives((back, slope, left) => Angle.FromRadians(Math.Atan2(back.Kilograms * Math.Cos(slope.Radians), left.Kilograms)));

    /// <summary>Where it pulls.</summary>
    public static SidePoint At(HangState state) =>
        state.Boxes[^1].Pin.Along(state.Boxes[^1].Tilt.Radians, -state.Boxes[^1].Box.Behind, state.Boxes[^1].Box.PinToPin);

    /// <summary>What it pulls to the rear.</summary>
    public Figure<Mass> Back =>
        Sum.Of($"{name}, what the pull-back pulls to the rear", "h = P · cos(θ)", Statics.Equilibrium).Put("P", force).Put("θ", up).Gives((back, slope) => back * Math.Cos(slope.Radians));

    /// <summary>What it leaves of a weight below a joint.</summary>
    /// <param name="of">Of which joint.</param>
    /// <param name="below">All that hangs on it.</param>
    public Figure<Mass> Left(string of, Figure<Mass> below) =>
        Sum.Of($"{of}, what the pull-back leaves of it", "v = w − P · sin(θ)", Statics.Equilibrium).Put("w", below).Put("P", force).Put("θ", up)
            .Gives((all, back, slope) => all - (back * Math.Sin(slope.Radians)));

    /// <summary>What it turns about a place, nose up.</summary>
    /// <param name="what">The figure in words.</param>
    /// <param name="ahead">How far its edge is ahead of that place.</param>
    /// <param name="above">How far above.</param>
    public Figure<Torque> Turns(string what, Figure<Length> ahead, Figure<Length> above) =>
        Sum.Of(what, "k = 9.80665 · P · (sin(θ) · e + cos(θ) · f)", Statics.Equilibrium).Put("P", force).Put("θ", up).Put("e", ahead).Put("f", above)
            .Gives((back, slope, x, z) => Torque.FromNewtonMeters(TrussStatics.Gravity * back.Kilograms * ((Math.Sin(slope.Radians) * x.Meters) + (Math.Cos(slope.Radians) * z.Meters))));

    /// <summary>The tilt at which all of it hangs below one place of the frame: what weight and pull turn about that comes to nothing.</summary>
    /// <param name="chain">Frame and boxes.</param>
    /// <param name="said">What tilt that is, in words.</param>
    /// <param name="pick">The place: a hole, or a place between two.</param>
    /// <param name="place">How far it is ahead of the front pin, and how far above.</param>
    /// <param name="centre">The same of the centre of gravity, with the frame level.</param>
    public Figure<Angle> FreeTilt(HungChain chain, string said, PickHole pick, (Figure<Length> Ahead, Figure<Length> Up) place, (Figure<Length> Ahead, Figure<Length> Up) centre)
    {
        var at = At(chain.At(Angle.Zero));
        var (e, f) = (facts.At(at.X - pick.Forward), facts.At(at.Z - pick.Up));
        var turns = Turns($"{name}, what the pull-back turns", e, f);
        var holds = Sum.Of($"{name}, what the pull-back holds", "m = 9.80665 · P · (sin(θ) · f − cos(θ) · e)", Statics.Equilibrium).Put("P", force).Put("θ", up).Put("f", f).Put("e", e)
            .Gives((back, slope, z, x) => Torque.FromNewtonMeters(TrussStatics.Gravity * back.Kilograms * ((Math.Sin(slope.Radians) * z.Meters) - (Math.Cos(slope.Radians) * x.Meters))));
        var turned = Sum.Of($"{name}, what turns it, level", "M = 9.80665 · W · (x − p) − k", Statics.Equilibrium).Put("W", weight).Put("x", centre.Ahead).Put("p", place.Ahead).Put("k", turns)
            .Gives((all, x, p, less) => Torque.FromNewtonMeters((TrussStatics.Gravity * all.Kilograms * (x.Meters - p.Meters)) - less.NewtonMeters));
        var held = Sum.Of($"{name}, what holds it, level", "N = 9.80665 · W · (u − z) + m", Statics.Equilibrium).Put("W", weight).Put("u", place.Up).Put("z", centre.Up).Put("m", holds)
            .Gives((all, high, low, more) => Torque.FromNewtonMeters((TrussStatics.Gravity * all.Kilograms * (high.Meters - low.Meters)) + more.NewtonMeters));
        return held.Value is null or { NewtonMeters: <= 0 } ? new Figure<Angle>(null, held.RestsOn.With(turned.RestsOn), Reason.Derived.It)
            : Sum.Of(said, "a = atan(M / N)", Statics.Equilibrium).Put("M", turned).Put("N", held)
                .Gives((one, other) => Angle.FromRadians(Math.Atan(one.NewtonMeters / other.NewtonMeters)));
    }

    /// <summary>Which part of what is left hangs on the front of two hooks: their leaning chains pull alike, against weight and pull together.</summary>
    public double FrontShare(HangState state, PickHole front, PickHole rear)
    {
        var (all, back, slope) = (weight.Value!.Value.Kilograms, force.Value!.Value.Kilograms, up.Value!.Value.Radians);
        var (pullX, pullZ) = (-back * Math.Cos(slope), back * Math.Sin(slope));
        var (fore, aft, at) = (state.PlaceOf(front), state.PlaceOf(rear), At(state));
        var turned = ((at.X - aft.X) * pullZ) - ((at.Z - aft.Z) * pullX) - (all * (state.Centre.X - aft.X));
        var whole = ((fore.X - aft.X) * (pullZ - all)) - ((fore.Z - aft.Z) * pullX);
        return whole >= 0 ? 1 : Math.Clamp(turned / whole, 0, 1);
    }

    /// <summary>Where the weight seems to act between two picks, with what the pull turns.</summary>
    public Figure<Length> Seeming(Figure<Length> centre, HangState state)
    {
        var at = At(state);
        var arm = Sum.Of($"{name}, arm of the pull-back", "r = sin(θ) · e + cos(θ) · f", Statics.Equilibrium).Put("θ", up).Put("e", facts.At(at.X)).Put("f", facts.At(at.Z))
            .Gives((slope, x, z) => Length.FromMeters((Math.Sin(slope.Radians) * x.Meters) + (Math.Cos(slope.Radians) * z.Meters)));
        var moment = Sum.Of($"{name}, what weight and pull-back turn", "M = 9.80665 · (W · g − P · r)", Statics.Equilibrium).Put("W", weight).Put("g", centre).Put("P", force).Put("r", arm)
            .Gives((all, from, back, off) => Torque.FromNewtonMeters(TrussStatics.Gravity * ((all.Kilograms * from.Meters) - (back.Kilograms * off.Meters))));
        return Sum.Of($"{name}, where what is left seems to act", "x = M / (9.80665 · V)", Statics.Equilibrium).Put("M", moment).Put("V", Carried)
            .Gives((turned, left) => Length.FromMeters(turned.NewtonMeters / (TrussStatics.Gravity * left.Kilograms)));
    }

    // Leaning chains move their holes as they pull: each acts so much further back per metre that it is above the front pin.
    internal Figure<Length> Leaning(Figure<Length> place, double above) =>
        Sum.Of($"{name}, a hole as its leaning chain pulls", "f = p − u · tan(β)", Statics.Equilibrium).Put("p", place).Put("u", facts.At(above)).Put("β", Lean)
            .Gives((ahead, high, lean) => Length.FromMeters(ahead.Meters - (high.Meters * Math.Tan(lean.Radians))));
}
