using Advance.Domain.Companies;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Stocks;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary>
/// What a truss bears by its maker: moment and shear, or what follows from its table of spans. A row of that table is a load it is allowed to carry,
/// so that it bears at least the moment and the shear of that.
/// </summary>
internal sealed class TrussCapacity
{
    /// <param name="truss">Which.</param>
    /// <param name="policies">What wear leaves.</param>
    public TrussCapacity(PlacedTruss truss, RiggingPolicies policies)
    {
        var own = truss.Kind?.Truss;
        var left = Figure.Policy("used-truss", own?.IsForUsed ?? true ? 100 : policies.UsedTruss);
        Adds = own?.Adds ?? MomentAndShear.Added;
        var (sagging, hogging) = WayUp(truss, own?.Moment is { } moment ? Figure.From(moment) : FromSpans(own));
        Sagging = Left($"{truss.Name}, sagging moment allowed", sagging, left);
        Hogging = hogging is null ? Sagging : Left($"{truss.Name}, hogging moment allowed", hogging, left);
        Shear = Sum.Of($"{truss.Name}, shear allowed", "Va = V · u / 100", RiggingStandards.Truss)
            .Put("V", own?.Shear is { } shear ? Figure.From(shear) : ShearFromSpans(own))
            .Put("u", left)
            .Gives((maker, share) => maker * (share / 100));
        Sideways = Left($"{truss.Name}, sideways moment allowed", own?.Sideways is { } across ? Figure.From(across) : NotSaid, left);
        Pressed = Sum.Of($"{truss.Name}, allowed from end to end", "Na = N · u / 100", RiggingStandards.Truss)
            .Put("N", own?.Pressed is { } pressed ? Figure.From(pressed) : new Figure<Force>(null, Doubts.None, Reason.Derived.It))
            .Put("u", left)
            .Gives((maker, share) => maker * (share / 100));
    }

    /// <summary>How moment and shear in one place add up.</summary>
    public MomentAndShear Adds { get; }

    /// <summary>Sagging.</summary>
    public Figure<Torque> Sagging { get; }

    /// <summary>Over a pick.</summary>
    public Figure<Torque> Hogging { get; }

    /// <summary>Shear.</summary>
    public Figure<Force> Shear { get; }

    /// <summary>Sideways, with nothing hanging on it.</summary>
    public Figure<Torque> Sideways { get; }

    /// <summary>Pressed from end to end, with nothing hanging on it.</summary>
    public Figure<Force> Pressed { get; }

    /// <summary>What may be in it before a dynamic factor.</summary>
    /// <param name="hoists">What each hoist may carry, N; null where nobody knows.</param>
    /// <param name="dynamic">The factor.</param>
    public LiftCapacities Over(IReadOnlyList<double?> hoists, double dynamic) =>
        new(hoists, Sagging.Value?.NewtonMeters / dynamic, Hogging.Value?.NewtonMeters / dynamic, Shear.Value?.Newtons / dynamic) { Adds = Adds };

    // Three chords bear other moments one way up than the other. Turned over, sagging and hogging change places; where nobody knows which way up
    // its maker means, the lesser counts for both. Null hogging is the same as sagging.
    private static (Figure<Torque> Sagging, Figure<Torque>? Hogging) WayUp(PlacedTruss truss, Figure<Torque> sagging)
    {
        var own = truss.Kind?.Truss;
        var hogging = own?.Hogging is { } said ? Figure.From(said) : null;
        if (own?.Chords != 3)
        {
            return (sagging, hogging);
        }

        var over = hogging ?? NotSaid;
        if (truss.Truss.Apex is not { } hangs || (hangs.Is(out var up) && own.Apex is { } by && by.Is(out var meant) && up == meant))
        {
            return (sagging, over);
        }

        if (hangs.IsKnown && own.Apex is { IsKnown: true } turned)
        {
            var asked = Doubts.Of(hangs.Doubt).With(Doubts.Of(turned.Doubt));
            return (over with { RestsOn = over.RestsOn.With(asked) }, sagging with { RestsOn = sagging.RestsOn.With(asked) });
        }

        var lesser = Sum.Of($"{truss.Name}, moment by its maker, whichever way up", "M = min(S, H)", RiggingStandards.Truss)
            .Put("S", sagging with { RestsOn = sagging.RestsOn.With(Doubts.Of(hangs.Doubt)).With(Doubts.Of(own.Apex?.Doubt)) })
            .Put("H", over)
            .Gives((sags, hogs) => sags < hogs ? sags : hogs);
        return (lesser, lesser);
    }

    private static Figure<Torque> Left(string name, Figure<Torque> moment, Figure<double> left) =>
        Sum.Of(name, "Ma = M · u / 100", RiggingStandards.Truss).Put("M", moment).Put("u", left).Gives((maker, share) => maker * (share / 100));

    private static Figure<Torque> NotSaid => new(null, Doubts.None, Reason.Derived.It);

    private static Figure<Torque> FromSpans(Truss? own)
    {
        var best = (own?.Table ?? []).SelectMany(row => new[] { (Row: row, Load: row.Centre, Divisor: 4), (Row: row, Load: row.Uniform, Divisor: 8) })
            .Where(one => one.Load is not null)
            .OrderByDescending(one => one.Load!.Value.Kilograms * one.Row.Span.Meters / one.Divisor)
            .FirstOrDefault();
        return best.Row is null ? NotSaid
            : Sum.Of("moment of a row of the maker's table", $"M = 9.80665 · P · L / {best.Divisor}", Statics.Equilibrium)
                .Put("P", new Figure<Mass>(best.Load, Doubts.None, Reason.Derived.It))
                .Put("L", new Figure<Length>(best.Row.Span, Doubts.None, Reason.Derived.It))
                .Gives((load, span) => Torque.FromNewtonMeters(TrussStatics.Gravity * load.Kilograms * span.Meters / best.Divisor));
    }

    private static Figure<Force> ShearFromSpans(Truss? own)
    {
        var most = (own?.Table ?? []).Select(row => row.Uniform).Where(load => load is not null).DefaultIfEmpty(null).Max();
        return most is null ? new Figure<Force>(null, Doubts.None, Reason.Derived.It)
            : Sum.Of("shear of a row of the maker's table", "V = 9.80665 · W / 2", Statics.Equilibrium)
                .Put("W", new Figure<Mass>(most, Doubts.None, Reason.Derived.It))
                .Gives(load => Force.FromNewtons(TrussStatics.Gravity * load.Kilograms / 2));
    }
}
