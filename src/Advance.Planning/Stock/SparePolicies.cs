using Advance.Domain.Companies;
using Advance.Domain.Figures;
using Advance.Domain.Stocks;
using Advance.Handbook;

namespace Advance.Planning;

/// <summary>How many pieces of a kind come along beside those in use.</summary>
internal static class SparePolicies
{
    // What is shorter is an adapter, whatever it is made of.
    private const double ShortestLead = 1;

    // What carries more is a feeder: nobody lays a second one in case.
    private const double MostOfALead = 20;

    // What has more cores carries several lines.
    private const int MostCoresOfALine = 4;

    /// <summary>Spares by policy.</summary>
    /// <param name="kind">Null where no stock has it; then there are no spares.</param>
    /// <param name="need">Pieces of it in use.</param>
    /// <param name="rig">Fixtures of all kinds in use.</param>
    /// <param name="policies">The company's.</param>
    public static Figure<int> Of(Kind? kind, Figure<int> need, Figure<int> rig, Policies policies) => kind switch
    {
        null => Figure.Count(0),
        { IsRadio: true } => OnePer("spare-radio", policies.SpareRadios, need),
        { Role: Role.Microphone } => Share("spare-mics", policies.SpareMics, need),
        { Role: Role.DirectBox } => Share("spare-di", policies.SpareDirectBoxes, need),
        { Role: Role.Stand } => Share("spare-stands", policies.SpareStands, need),
        { Role: Role.Loudspeaker, Mains: not null } => OnePer("spare-boxes", policies.SpareBoxes, need),
        { Role: Role.Fixture } => Fixtures(need, rig, policies),
        { Role: Role.Terminator } => Share("spare-terminators", policies.SpareTerminators, need),
        { Role: Role.Cable, Cable: { } cable } => Leads(cable, need, policies),
        _ => Figure.Count(0),
    };

    private static Figure<int> Leads(Cable cable, Figure<int> need, Policies policies) => cable switch
    {
        _ when cable.Length.Is(out var length) && length.Meters < ShortestLead => Share("spare-adapters", policies.SpareAdapters, need),
        { Carries: "mic-line", Cores: <= MostCoresOfALine } => Share("spare-mic-leads", policies.SpareMicLeads, need),
        { Carries: "mains" } when !(cable.Rating is { } rating && rating.Is(out var most) && most.Amperes > MostOfALead) =>
            Share("spare-mains-leads", policies.SpareMainsLeads, need),
        { Carries: "lighting-control" } => Share("spare-lighting-leads", policies.SpareLightingLeads, need),
        _ => Figure.Count(0),
    };

    private static Figure<int> Fixtures(Figure<int> need, Figure<int> rig, Policies policies) => rig.Value > policies.SpareFixturesOver
        ? Share("spare-fixtures", policies.SpareFixtures, need)
        : new Figure<int>(0, rig.RestsOn, new Reason.Policy("spare-fixtures-over"));

    private static Figure<int> Share(string policy, Share share, Figure<int> need) =>
        Sum.Of("spares", "s = max(m, ⌈p · n / 100⌉), or 0 where n = 0", Publication.CommonPractice)
            .Put("m", Figure.Policy(policy, share.AtLeast))
            .Put("p", Figure.Policy(policy, share.Percent))
            .Put("n", need)
            .Gives(Spares.Of);

    private static Figure<int> OnePer(string policy, OnePer one, Figure<int> need) => need.Value > one.Over
        ? Sum.Of("spares", "s = ⌈n / q⌉", Publication.CommonPractice)
            .Put("n", need)
            .Put("q", Figure.Policy(policy, one.Each))
            .Gives((inUse, each) => ((inUse - 1) / each) + 1)
        : new Figure<int>(0, need.RestsOn, new Reason.Policy(policy));
}
