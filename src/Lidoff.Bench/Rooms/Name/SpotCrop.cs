using System.Globalization;
using Lidoff.Evidence.Folding;
using Lidoff.Seeing.Kinds;
using Lidoff.Telling.Dossiers;

namespace Lidoff.Bench.Rooms.Name;

/// <summary>The piece of a picture that shows a spot, px of the upright picture.</summary>
/// <param name="Sha256">Hash of the picture.</param>
/// <param name="Width">Width of the whole picture.</param>
/// <param name="Height">Height of the whole picture.</param>
/// <param name="X">Left edge of the piece.</param>
/// <param name="Y">Upper edge of the piece.</param>
/// <param name="Side">Side of the piece, which is a square.</param>
public sealed record SpotCrop(string Sha256, int Width, int Height, double X, double Y, double Side)
{
    // A place without a box says nothing of its size: an eighth of the picture shows a chip with its neighbours on usual pictures.
    private const double ShareOfPicture = 8;

    /// <summary>What an SVG takes as its view box.</summary>
    public string ViewBox => string.Create(CultureInfo.InvariantCulture, $"{X:0.#} {Y:0.#} {Side:0.#} {Side:0.#}");

    /// <summary>The piece around the newest place somebody pointed at; null where nobody did, or the picture cannot be opened.</summary>
    public static SpotCrop? Of(OpenDossier dossier, IEnumerable<SpotSighting> pointed)
    {
        foreach (var spot in pointed.Reverse().Where(spot => spot.Picture.Length > 0 && spot.Middle is not null))
        {
            if (dossier.Model.Picture(spot.Picture) is not { Found: true } found || dossier.Picture(found.Sha256, found.Name) is not { Ok: true } header) continue;
            return Around(found.Sha256, header.Value.Width, header.Value.Height, spot);
        }

        return null;
    }

    internal static SpotCrop Around(string sha256, int width, int height, SpotSighting spot)
    {
        var (x, y) = spot.Middle!.Value;
        var wanted = spot.Box is { } around ? 1.3 * Math.Max(around.Width, around.Height) : Math.Max(width, height) / ShareOfPicture;
        var side = Math.Clamp(wanted, 16, Math.Max(16, Math.Min(width, height)));
        return new(sha256, width, height, Math.Clamp(x - (side / 2), 0, Math.Max(0, width - side)), Math.Clamp(y - (side / 2), 0, Math.Max(0, height - side)), side);
    }
}
