using Lidoff.Bench.Serving;
using Lidoff.Evidence.Entries;
using Lidoff.Seeing.Kinds;
using Lidoff.Telling.Dossiers;

namespace Lidoff.Bench.Components.Parts.Reading;

/// <summary>A machine's reading of a spot's mark.</summary>
/// <param name="Entry">Its entry.</param>
/// <param name="Specimen">Whose mark it is; empty where none was named.</param>
/// <param name="Counts">True where it names the spot, since no person read the mark.</param>
/// <param name="Pictures">Names of the pictures it was read in; hostile text.</param>
/// <param name="Crops">Of these, the ones that show its lines, cut out upright.</param>
/// <param name="Lines">Its lines.</param>
/// <param name="Written">All of it as one would type it, alternatives and all; empty where nothing was read.</param>
/// <param name="P">Probability that the likeliest reading of every line is right.</param>
/// <param name="TurnDeg">Clockwise turn that makes it upright in its first picture, degrees.</param>
/// <param name="Otherwise">The lines read the other way up, where it was not clear which is right.</param>
/// <param name="Says">What was said of it.</param>
public sealed record ReadingRow(
    EntryId Entry, string Specimen, bool Counts, ValueList<string> Pictures, ValueList<ReadingCrop> Crops, ValueList<ReadingLine> Lines, string Written, double P, double TurnDeg, ValueList<string> Otherwise, ValueList<string> Says)
{
    /// <summary>Marks that are no text, cut out upright; none where the picture is gone.</summary>
    public ValueList<string> Emblems { get; init; } = [];

    /// <summary>Colour bands as one would type them; empty where there are none.</summary>
    public string Bands { get; init; } = "";

    /// <summary>What the bands may say, the likeliest first, with its odds.</summary>
    public ValueList<(string Says, double P)> BandValues { get; init; } = [];

    /// <summary>What the pin-1 dot says of the turn; empty where none was seen.</summary>
    public string Dot { get; init; } = "";

    // Of bands as of lines: so many readings are shown.
    private const int MostValues = 5;

    /// <summary>The newest reading of each specimen at a spot, in their order.</summary>
    public static ValueList<ReadingRow> Of(OpenDossier dossier, string spot)
    {
        var readings = dossier.Session.View.Live<ReadingSighting>().Where(each => each.Value.Spot == spot).ToList();
        if (readings.Count == 0) return [];
        var names = dossier.Session.View.Live<FileAdded>().GroupBy(file => file.Value.Sha256, StringComparer.Ordinal).ToDictionary(group => group.Key, group => group.First().Value.Name, StringComparer.Ordinal);
        var machine = dossier.Model.Identity(spot).Evidence.Machine;
        return [.. readings.GroupBy(each => each.Specimen, StringComparer.Ordinal).OrderBy(group => group.Key, NaturalOrder.Instance).Select(group => group.Last()).Select(each => new ReadingRow(
            each.Id, each.Specimen, machine is { Counts: true } && machine.Entry == each.Id,
            [.. each.Value.Pictures.Select(sha256 => names.GetValueOrDefault(sha256, "")).Where(name => name.Length > 0)],
            // What was erased or came from elsewhere has no piece to show.
            [.. ReadingCrop.Of(each.Value, sha256 => names.GetValueOrDefault(sha256, "")).Where(crop => names.ContainsKey(crop.Sha256))],
            each.Value.Lines, each.Value.Mark?.Written ?? "", each.Value.P, each.Value.TurnDeg, each.Value.Otherwise, each.Value.Says)
        {
            Emblems = each.Value.Pictures.Count > 0 && names.ContainsKey(each.Value.Pictures[0]) ? [.. each.Value.Emblems.Select(emblem => CropRoutes.Address(each.Value.Pictures[0], emblem.Piece(each.Value.TurnDeg)))] : [],
            Dot = each.Value.PinOne?.Says ?? "",
            Bands = each.Value.BandsWritten,
            BandValues = [.. each.Value.BandOdds(null)?.Readings.Take(MostValues).Select(value => (value.Reading.ToString(), value.P)) ?? []],
        })];
    }
}
