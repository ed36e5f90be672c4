using Lidoff.Evidence.Entries;
using Lidoff.Seeing.Measuring.Targets;

namespace Lidoff.Bench.Rooms.See.Viewing;

/// <summary>What was found in a picture, as small crosses over it.</summary>
internal static class FoundOver
{
    // More crosses than these would hide what they stand on.
    private const int Most = 400;

    /// <summary>The places of a target: all of them, or every second, third … where they are many.</summary>
    public static ValueList<StageMark> Of(FoundTarget found)
    {
        var each = 1;
        while (found.Places.Count / (each * each) > Most) each++;
        return [.. found.Places.Where(place => place.Column % each == 0 && place.Row % each == 0).Select((place, i) => new StageMark($"found:{i}", "", place.At.X, place.At.Y, "found", 0))];
    }

    /// <summary>The known places of a target that was stored.</summary>
    public static IEnumerable<StageMark> Of(ScaleRow row) =>
        row.Value.Reference.Target is { } target ? target.Tiles.Select((tile, i) => new StageMark($"found:{row.Entry.Hex}:{i}", "", tile.At.X, tile.At.Y, "found", 0)) : [];
}
