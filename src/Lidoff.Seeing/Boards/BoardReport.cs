using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Measuring;

namespace Lidoff.Seeing.Boards;

/// <summary>Puts a joint fit into the records that people see.</summary>
internal sealed class BoardReport(BoardJoint joint, PictureToLay? first, IReadOnlyList<int> contrary)
{
    // With four landmarks a view's slant is seen; below that it is taken from what is usual on a bench.
    private const int EnoughForSlant = 4;

    private const double UmPerMm = 1000;

    public LaidPicture Picture(int view)
    {
        var (picture, seen) = (joint.Pictures[view], joint.Solution.State.Views[view]);
        LandmarkRest[] rests = [.. picture.Landmarks.Select(landmark => Rest(view, landmark))];
        var remarks = new List<string>();
        if (contrary.Contains(view)) remarks.Add(SeeingSentences.OtherSide(picture.Name, Tied() ? first!.Name : null));
        remarks.AddRange(joint.Blunders.Where(blunder => blunder.Sighting.View == view).OrderBy(blunder => blunder.Sighting.Landmark).Select(blunder =>
            Wrong(picture, rests.Single(rest => rest.Name == joint.Names[blunder.Sighting.Landmark]), blunder.OrViews)));
        var used = rests.Count(rest => rest.Used && rest.Tested);
        if (used < EnoughForSlant) remarks.Add(SeeingSentences.SlantUnknown(picture.Name, used));
        return new(
            picture.Sha256, picture.Name, seen.Mirrored, seen.ToPicture(picture.Sha256), [.. rests], [.. remarks],
            [.. joint.Quarrels.Where(quarrel => quarrel.View == view).Select(quarrel => Warning(picture, quarrel))]);
    }

    public ValueList<LaidLandmark> Landmarks() =>
    [
        .. joint.Names.Select((name, landmark) =>
        {
            var (problem, at) = (joint.Solution.Problem, joint.Solution.State.Places[landmark]);
            var (x, y) = (problem.Place(landmark, 0), problem.Place(landmark, 1));
            var covariance = joint.Solution.Covariance;
            return new LaidLandmark(
                name, new(at.X, at.Y), new(covariance[x, x], covariance[x, y], covariance[y, y]), problem.Sightings.Count(sighting => sighting.Landmark == landmark));
        }),
    ];

    private bool Tied() => first is not null && 2 * contrary.Count == joint.Pictures.Count(picture => picture.SideSaid);

    private LandmarkRest Rest(int view, SeenLandmark seen)
    {
        var (state, problem) = (joint.Solution.State, joint.Solution.Problem);
        var landmark = joint.Number(seen.Name);
        var (place, at) = (state.Places[landmark], state.Views[view]);
        var used = joint.Blunders.All(blunder => blunder.Sighting.View != view || blunder.Sighting.Landmark != landmark);
        var others = problem.Sightings.Any(other => other.Landmark == landmark && other.View != view) || problem.Known.Any(known => known.Landmark == landmark);
        double? um = joint.ScaleKnown ? at.Find(seen.At).DistanceTo(place) * UmPerMm : null;
        return new(seen.Name, at.Show(place).DistanceTo(seen.At), um, used, others);
    }

    private string Wrong(PictureToLay picture, LandmarkRest rest, IReadOnlyList<int> orViews) =>
        SeeingSentences.WrongLandmark(rest.Name, picture.Name, rest.Um, rest.Px, [.. orViews.Select(view => joint.Pictures[view].Name)]);

    private MeasureWarning Warning(PictureToLay picture, BoardReference quarrel)
    {
        var (mm, slopes) = BoardSlopes.Length(joint.Solution.State.Views[quarrel.View], quarrel.From, quarrel.To);
        var row = joint.Solution.Problem.Row(quarrel, joint.Solution.State);
        // The row is in units of the known length's own uncertainty; back to mm.
        var u = Math.Sqrt(joint.Solution.Between(row, row)) * quarrel.RelativeU * mm;
        return new(WarningCodes.ReferenceDisagrees, SeeingSentences.BoardDisagrees(picture.Name, quarrel.Length.LengthMm, quarrel.RelativeU * quarrel.Length.LengthMm, mm, u));
    }
}
