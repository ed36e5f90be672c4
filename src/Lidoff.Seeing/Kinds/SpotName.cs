using Lidoff.Evidence.Entries;

namespace Lidoff.Seeing.Kinds;

/// <summary>Reads a spot's designator.</summary>
internal static class SpotName
{
    /// <summary>Most characters of a designator, so that it fits on a leader line.</summary>
    public const int Longest = 40;

    /// <summary>The designator.</summary>
    public static string Read(PayloadReader reader) => reader.Text("spot", Longest);
}
