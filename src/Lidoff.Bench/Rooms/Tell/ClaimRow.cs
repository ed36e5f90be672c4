using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Grading;

namespace Lidoff.Bench.Rooms.Tell;

/// <summary>A sentence with its support.</summary>
/// <param name="Id">"C7".</param>
/// <param name="Text">The sentence with its values filled in.</param>
/// <param name="Written">The sentence as it was typed.</param>
/// <param name="Why">True when it says why something was done.</param>
/// <param name="Grade">How well it is known.</param>
/// <param name="State">"same", "moved", "outside", "flipped", "lost" or "program changed"; before it was published "new" or "unfinished".</param>
/// <param name="Means">What the state means; empty where nothing moved.</param>
/// <param name="Moved">What moved.</param>
/// <param name="RestsOn">How many entries it rests on.</param>
/// <param name="SupportErased">True when something it rested on when it was published was erased since.</param>
/// <param name="Published">True when readers were told something of it.</param>
/// <param name="Entry">The entry that holds it.</param>
public sealed record ClaimRow(
    string Id, string Text, string Written, bool Why, Grade Grade, string State, string Means, ValueList<MovedRow> Moved, int RestsOn, bool SupportErased, bool Published, EntryId Entry)
{
    /// <summary>True when it leans on what is not measured and nobody was told it yet.</summary>
    public bool Unfinished => !Published && Means.Length > 0;

    /// <summary>True when it is not what readers were told.</summary>
    public bool Stale => Published && Means.Length > 0;
}
