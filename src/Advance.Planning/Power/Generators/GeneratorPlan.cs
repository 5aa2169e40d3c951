using Advance.Domain.Figures;
using Advance.Domain.Venues;
using UnitsNet;

namespace Advance.Planning;

/// <summary>A generator that the show hangs on, and what is asked of it.</summary>
/// <param name="Power">What its service gives.</param>
/// <param name="Set">As written.</param>
public sealed record GeneratorPlan(ServicePower Power, Generator Set)
{
    /// <summary>What is left of its rating in this place.</summary>
    public required Figure<ElectricApparentPower> Rating { get; init; }

    /// <summary>What its engine gives in this place; 0.8 of its rating where nobody says.</summary>
    public required Figure<UnitsNet.Power> Engine { get; init; }

    /// <summary>Whether nobody has said what its engine gives.</summary>
    public bool IsEngineAssumed => Set.Engine is null;

    /// <summary>Rated current of each line.</summary>
    public required Figure<ElectricCurrent> Line { get; init; }

    /// <summary>What a line carries with ease, by the company.</summary>
    public required Figure<ElectricCurrent> LineWithEase { get; init; }

    /// <summary>The worst line, of the rated current.</summary>
    public required Figure<Ratio> LineShare { get; init; }

    /// <summary>Real power in the worst state, of what the engine gives.</summary>
    public required Figure<Ratio> EngineShare { get; init; }

    /// <summary>Each device in the order of switching on.</summary>
    public required IReadOnlyList<LoadStep> Steps { get; init; }

    /// <summary>The largest step it takes; null where nobody says.</summary>
    public required Figure<Ratio>? MostStep { get; init; }

    /// <summary>All that starts at once after a blip, of its rating.</summary>
    public required Figure<Ratio> Restart { get; init; }

    /// <summary>The most leading reactive power it bears; null where nobody says.</summary>
    public required Figure<ElectricApparentPower>? MostLeading { get; init; }

    /// <summary>The state in which its legs are most uneven, of those that load it; null where none does, or it has not three legs.</summary>
    public required StatePower? Uneven { get; init; }

    /// <summary>How uneven its legs may be, by its maker or by the company.</summary>
    public required Figure<Ratio> MostUneven { get; init; }

    /// <summary>Its hours, in the order of the day; empty where nobody has written when the show states are.</summary>
    public required IReadOnlyList<GeneratorSpell> Spells { get; init; }

    /// <summary>Mean load over its hours, of what the engine gives; null where nobody has written them.</summary>
    public required Figure<Ratio>? Mean { get; init; }

    /// <summary>How long our own loads leave it below what the company asks; null where nobody has written its hours.</summary>
    public required Figure<Duration>? Underloaded { get; init; }

    /// <summary>Fuel; null where nobody has written its hours or what it burns.</summary>
    public required GeneratorFuel? Fuel { get; init; }

    /// <summary>What it holds into a short; three times its rated current where nobody says.</summary>
    public required Figure<ElectricCurrent> Sustained { get; init; }

    /// <summary>Whether nobody has said what it holds into a short.</summary>
    public bool IsSustainedAssumed => Set.Sustained is null;

    /// <summary>Its service.</summary>
    public SupplyPoint Service => Power.Service;

    /// <summary>What nobody has told of it and something hangs on, as its hirer calls it.</summary>
    public IReadOnlyList<string> Missing =>
    [
        .. new[]
        {
            (Name: "rating", IsMissing: Rating.Value is null),
            (Name: "largest step of load", IsMissing: MostStep?.Value is null),
            (Name: "leading reactive power", IsMissing: MostLeading?.Value is null && Power.MostLeading.Leading.Value is { } leading && leading.Voltamperes > 0),
            (Name: "fuel by load", IsMissing: Set.Fuel.Count == 0),
        }.Where(one => one.IsMissing).Select(one => one.Name),
    ];

    /// <summary>Its numbers, each under its address.</summary>
    internal IEnumerable<Stated> Figures =>
    [
        Stated.Of(Address / "rating", $"{Service.Name}, rating here", Rating),
        Stated.Of(Address / "engine", $"{Service.Name}, engine here{(IsEngineAssumed ? ", assumed" : "")}", Engine),
        Stated.Of(Address / "line", $"{Service.Name}, rated current of a line", Line),
        Stated.Of(Address / "line-share", $"{Service.Name}, worst line of its rated current", LineShare),
        Stated.Of(Address / "engine-share", $"{Service.Name}, real power of what the engine gives, worst in {StateShares.Word(Power.Worst.State)}", EngineShare),
        Stated.Of(Address / "restart", $"{Service.Name}, all restarting at once, of its rating", Restart),
        Stated.Of(Address / "sustained", $"{Service.Name}, held into a short{(IsSustainedAssumed ? ", assumed" : "")}", Sustained),
        .. Steps.SelectMany(step => new[]
        {
            Stated.Of(Address / "step" / step.On.Device.Name / "load", $"{Service.Name}, step {step.On.Number}, {step.On.Device.Name}", step.Load),
            Stated.Of(Address / "step" / step.On.Device.Name / "share", $"{Service.Name}, step {step.On.Number}, of its rating", step.Share),
        }),
        .. Spells.SelectMany(spell => FiguresOf(spell, Address / "hours" / $"{spell.When.From}")),
        .. Uneven?.Unbalance is { } uneven ? [Stated.Of(Address / "unbalance", $"{Service.Name}, unbalance, worst in {StateShares.Word(Uneven.State)}", uneven)] : Array.Empty<Stated>(),
        .. Mean is { } mean ? [Stated.Of(Address / "mean", $"{Service.Name}, mean load", mean)] : Array.Empty<Stated>(),
        .. Underloaded is { } hours ? [Stated.Of(Address / "underloaded", $"{Service.Name}, hours at little load", hours)] : Array.Empty<Stated>(),
        .. Fuel is { } fuel ? [Stated.Of(Address / "fuel", $"{Service.Name}, fuel", fuel.Needed)] : Array.Empty<Stated>(),
        .. Fuel?.DryAt is { } dry ? [Stated.Of(Address / "tank", $"{Service.Name}, a full tank lasts, from midnight", dry)] : Array.Empty<Stated>(),
    ];

    private Address Address => Service.Address / "generator";

    private IEnumerable<Stated> FiguresOf(GeneratorSpell spell, Address at) =>
    [
        Stated.Of(at / "real", $"{Service.Name}, real power from {spell.When.From}", spell.Power.Real),
        Stated.Of(at / "share", $"{Service.Name}, load from {spell.When.From}", spell.Share),
        Stated.Of(at / "sure-share", $"{Service.Name}, load of our own from {spell.When.From}", spell.SureShare),
        Stated.Of(at / "an-hour", $"{Service.Name}, fuel an hour from {spell.When.From}", spell.AnHour),
        Stated.Of(at / "burnt", $"{Service.Name}, fuel burnt from {spell.When.From}", spell.Burnt),
    ];
}
