using Lidoff.Bench.Rooms.See.Viewing;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Kinds;

namespace Lidoff.Bench.Rooms.See.Reading;

/// <summary>A line of text that a machine read in a picture.</summary>
/// <param name="Spot">On what.</param>
/// <param name="Corners">Its outline, px.</param>
public sealed record ReadOver(string Spot, ValueList<PicturePoint> Corners)
{
    /// <summary>The lines that the newest readings found in a picture.</summary>
    public static IEnumerable<ReadOver> Of(IDossierView view, string sha256) =>
        view.Live<ReadingSighting>().GroupBy(each => (each.Value.Spot, each.Specimen)).Select(group => group.Last().Value)
            .SelectMany(reading => Enumerable.Range(0, reading.Pictures.Count).Where(picture => reading.Pictures[picture] == sha256)
                .SelectMany(picture => reading.Lines.Select(line => line.OutlineIn(picture)).Where(outline => outline.Count > 0).Select(outline => new ReadOver(reading.Spot, outline))));

    /// <summary>The outline as sides drawn over the picture.</summary>
    /// <param name="at">Which of the lines it is, from 0.</param>
    public IEnumerable<StageLine> Sides(int at) => Corners.Select((corner, i) =>
    {
        var next = Corners[(i + 1) % Corners.Count];
        return new StageLine($"read:{at}:{i}", corner.X, corner.Y, next.X, next.Y, "read", "", true);
    });
}
