namespace Advance.Planning;

/// <summary>
/// Which half of a connector sits in the panel. Mains comes out of holes and goes in over pins, and so does lighting control (ANSI E1.11,
/// 7.1, from memory: sending ports are female). Microphone lines come out over pins and go into holes (IEC 61938, from memory). Everything
/// else that leads are made for has holes at both ends: jack, phono, network, loudspeaker.
/// </summary>
internal static class LeadSockets
{
    /// <summary>What the lead must have at the source.</summary>
    public static LeadPlugSex AtSource(string carries, LeadPlug socket) => (Given(socket), Runs(carries, socket)) switch
    {
        ({ } given, _) => given,
        (_, Direction.PinsAtTheSource) => LeadPlugSex.Female,
        _ => LeadPlugSex.Male,
    };

    /// <summary>What the lead must have where it goes.</summary>
    public static LeadPlugSex AtLoad(string carries, LeadPlug socket) => (Given(socket), Runs(carries, socket)) switch
    {
        ({ } given, _) => given,
        (_, Direction.HolesAtTheSource) => LeadPlugSex.Female,
        _ => LeadPlugSex.Male,
    };

    // A socket whose own half was written takes the other one.
    private static LeadPlugSex? Given(LeadPlug socket) => socket.Sex switch
    {
        LeadPlugSex.Male => LeadPlugSex.Female,
        LeadPlugSex.Female => LeadPlugSex.Male,
        _ => null,
    };

    private static Direction Runs(string carries, LeadPlug socket)
    {
        if (carries == "mains")
        {
            return Direction.HolesAtTheSource;
        }

        var isRound = socket.Family.StartsWith("xlr", StringComparison.Ordinal) || socket.Family.StartsWith("multipin", StringComparison.Ordinal);
        return !isRound ? Direction.HolesAtBoth : carries == "lighting-control" ? Direction.HolesAtTheSource : Direction.PinsAtTheSource;
    }

    private enum Direction
    {
        HolesAtBoth,
        HolesAtTheSource,
        PinsAtTheSource,
    }
}
