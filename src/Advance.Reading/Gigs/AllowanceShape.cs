using Advance.Domain.Facts;
using Advance.Domain.Gigs;
using Advance.Reading.Phrases;
using Advance.Reading.Shapes;

namespace Advance.Reading.Gigs;

/// <summary>What stands for kit that is not chosen yet: one, a list, or a map from what it is for to how much.</summary>
internal static class AllowanceShape
{
    private static readonly Shape<Allowance> Said = new TurnedShape<Given<(string For, Amount Amount)>, Allowance>(
        new GivenShape<(string For, Amount Amount)>(Written.As(Amounts.Allowance)),
        (said, _) => said.Is(out var known) ? Of(known.For, said.Select(one => one.Amount)) : new Allowance("kit", null, null, said.At) { Doubt = said.Doubt });

    private static readonly Shape<Allowance> ByName = new TurnedShape<Given<Amount>, Allowance>(
        new GivenShape<Amount>(Written.As(Amounts.Amount)), (amount, reader) => Of(reader.Name, amount));

    public static readonly Shape<IReadOnlyList<Allowance>> It = new EitherShape<IReadOnlyList<Allowance>>(
        new TurnedShape<Allowance, IReadOnlyList<Allowance>>(Said, (one, _) => [one]),
        Written.List(Said),
        Written.Things(ByName));

    private static Allowance Of(string what, Given<Amount> amount) =>
        !amount.Is(out var known) ? new(what, null, null, amount.At) { Doubt = amount.Doubt }
        : known.Draw is { } draw ? new(what, amount.Select(_ => draw), null, amount.At) { FedBy = known.FedBy }
        : new(what, null, amount.Select(one => one.Weight!.Value), amount.At);
}
