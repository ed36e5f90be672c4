using Lidoff.Evidence.Entries;

namespace Lidoff.Demo;

/// <summary>What is noted about the demo device, line by line as a user would type it. All of it is invented; the chips are real parts.</summary>
internal static class DemoLines
{
    /// <summary>When the device was opened.</summary>
    public static readonly DateTimeOffset FirstDay = new(2026, 3, 2, 9, 0, 0, TimeSpan.Zero);

    /// <summary>When the swapped digits were found.</summary>
    public static readonly DateTimeOffset LaterDay = new(2026, 3, 9, 9, 0, 0, TimeSpan.Zero);

    /// <summary>Everything noted before publication.</summary>
    public static IReadOnlyList<string> First() => [.. DemoSeeLines.All, .. DemoOpenLines.All, .. DemoTraceLines.All, .. DemoTellLines.All];

    /// <summary>What was noted after publication: two digits of a calliper reading (the entry <paramref name="swapped"/>) had been swapped.</summary>
    public static IReadOnlyList<string> Later(EntryId swapped) =>
    [
        """{"kind":"length","spot":"J1","what":"length","mm":18.75,"u_mm":0.02,"instrument":"calliper"}""",
        $$"""{"kind":"supersede","target":"{{swapped.Hex}}","by_line":1,"why":"two digits were swapped in writing it down"}""",
    ];

    /// <summary>The lines with the times at which they were seen: a minute apart on an invented day, so that every demo has the same.</summary>
    public static IEnumerable<string> Seen(IReadOnlyList<string> lines, DateTimeOffset begun) =>
        lines.Select((line, i) => FormattableString.Invariant($"{line[..^1]},\"at\":\"{begun.AddMinutes(i):yyyy-MM-dd'T'HH:mm:ss'Z'}\"}}"));
}
