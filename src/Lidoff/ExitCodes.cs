namespace Lidoff;

/// <summary>What the program's exit status says; the first that applies (docs/contracts.md).</summary>
public static class ExitCodes
{
    /// <summary>Done.</summary>
    public const int Done = 0;

    /// <summary>Done, and there is something to look at: a refused item, a quarrel, a stale claim.</summary>
    public const int Look = 1;

    /// <summary>Called wrongly, or a command that does not exist yet.</summary>
    public const int Usage = 2;

    /// <summary>The whole input was refused.</summary>
    public const int Refused = 3;

    /// <summary>Our fault; a report file is written and nothing is lost.</summary>
    public const int OurFault = 4;

    /// <summary>Stopped by the user.</summary>
    public const int Stopped = 130;
}
