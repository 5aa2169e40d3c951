namespace Advance.Cli;

/// <summary>What the program tells the shell.</summary>
internal static class ExitCode
{
    /// <summary>Done.</summary>
    public const int Done = 0;

    /// <summary>Done, and something stops the package from being issued.</summary>
    public const int Stopped = 1;

    /// <summary>The description cannot be read, the command line makes no sense, or nothing can be written where it should go.</summary>
    public const int BrokenInput = 2;

    /// <summary>A bug; 70 is EX_SOFTWARE of sysexits.h.</summary>
    public const int Bug = 70;
}
