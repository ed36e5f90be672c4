using Lidoff.Evidence.Entries;

namespace Lidoff.Seeing.Kinds;

/// <summary>Reads a spot's designator.</summary>
internal static class SpotName
{
    /// <summary>The designator; at most 40 characters, so that it fits on a leader line.</summary>
    public static string Read(PayloadReader reader) => reader.Text("spot", 40);
}
