using System.Globalization;
using Lidoff.Bench.Data;
using Lidoff.Bench.Hosting;
using Lidoff.Seeing.Pictures;
using Lidoff.Seeing.Reading.Finding;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Lidoff.Bench.Serving;

/// <summary>A part of a picture cut out upright: <c>/crops/HASH/X,Y,WIDTH,HEIGHT,TURN</c>, middle and sides in px, turn in radians clockwise. A picture never changes under its hash.</summary>
internal static class CropRoutes
{
    private const int LongestSide = 640;

    // No picture is larger, and no turn needs more.
    private const double MostPx = 200_000;

    public static void MapCrops(this IEndpointRouteBuilder routes) =>
        routes.MapGet("/crops/{sha256}/{region}", (string sha256, string region, HttpContext context, BenchOptions options, PictureSeats seats) =>
            TileRoutes.Send(context, FileRoutes.Hash(sha256) && Region(region) is not null, options.Tiles, _ => Cut(sha256, Region(region)!.Value, options, seats, context.RequestAborted)));

    /// <summary>The address of a part of a picture.</summary>
    public static string Address(string sha256, PictureRegion region) =>
        string.Create(CultureInfo.InvariantCulture, $"/crops/{sha256}/{region.Middle.X:0.#},{region.Middle.Y:0.#},{region.Width:0.#},{region.Height:0.#},{region.Turn:0.####}");

    private static async Task<PictureBytes?> Cut(string sha256, PictureRegion region, BenchOptions options, PictureSeats seats, CancellationToken stop)
    {
        if (options.PathOf(sha256) is not { } path || !PictureFile.Read(path, sha256[..12]).TryValue(out var header)) return null;
        return await seats.Take(PictureSeats.IsLarge(header), () => UprightCrop.Jpeg(path, sha256[..12], header, region, LongestSide) is { Ok: true } cut ? new PictureBytes(cut.Value, "image/jpeg") : null, stop).ConfigureAwait(false);
    }

    private static PictureRegion? Region(string text)
    {
        var parts = text.Split(',');
        var numbers = new double[5];
        if (parts.Length != numbers.Length) return null;
        for (var i = 0; i < numbers.Length; i++)
        {
            if (!double.TryParse(parts[i], NumberStyles.Float, CultureInfo.InvariantCulture, out numbers[i]) || !double.IsFinite(numbers[i]) || Math.Abs(numbers[i]) > MostPx) return null;
        }

        return numbers[2] >= 1 && numbers[3] >= 1 ? new PictureRegion(new(numbers[0], numbers[1]), numbers[2], numbers[3], numbers[4]) : null;
    }
}
