using Lidoff.Evidence.Entries;
using Lidoff.Numbers;
using Lidoff.Numbers.Failing;
using Lidoff.Numbers.Typed.Codes;
using Lidoff.Numbers.Typed.Codes.Bands;
using Lidoff.Seeing.Pictures;
using Lidoff.Seeing.Reading.Engine;
using Lidoff.Seeing.Reading.Finding;

namespace Lidoff.Seeing.Reading.Bands;

/// <summary>Reads the colour bands of an axial part: its body, the bands along it, their colours in every light that is believed in, and what they may say.</summary>
public static class BandReader
{
    /// <summary>Least px along the body: a band is a fiftieth of it or more.</summary>
    public const int LeastSide = 40;

    // Three parts in five have a wider gap before the last band, half as wide again and more; the others none. Judgements.
    private const double WithGap = 0.6;
    private const double GapLog = 0.5;
    private const double GapU = 0.16;

    /// <summary>Reads the bands in a part of a picture file.</summary>
    /// <param name="path">The file.</param>
    /// <param name="name">Its name as people know it.</param>
    /// <param name="header">Its header.</param>
    /// <param name="box">Around one part, px of the upright picture; null for all of it.</param>
    /// <param name="sort">What it is; null where that is not known.</param>
    public static Outcome<SeenBands> Read(string path, string name, PictureHeader header, PictureRegion? box = null, PassiveSort? sort = null)
    {
        Guard.NotNull(header);
        var where = box ?? PictureRegion.Box(0, 0, header.Width, header.Height);
        return PictureReading.Fits(name, header, where) is { } fault ? fault : ColourPyramidFile.Read(path, name, header, where).Then(picture => Read(picture, name, where, sort));
    }

    /// <summary>Reads the bands in a part of a picture.</summary>
    public static Outcome<SeenBands> Read(ColourPyramid picture, string name, PictureRegion box, PassiveSort? sort = null)
    {
        if (Guard.NotNull(picture).IsGrey) return ReadingSentences.BandsWithoutColour(name);
        var body = AxialBody.Find(picture, box);
        if (body.Width < LeastSide) return ReadingSentences.BandsTooSmall(name, body.Width, LeastSide);
        var profile = BandProfile.Of(picture, body);
        if (profile.Bands.Count == 0) return ReadingSentences.NoBands(name);
        if (profile.Bands.Count > BandOdds.Most) return ReadingSentences.ManyBands(name, profile.Bands.Count, BandOdds.Most);
        var lights = BandLights.Of(profile);
        var firstToLast = FirstToLast(profile.Bands);
        var odds = BandOdds.Of(lights, firstToLast, sort);
        return new SeenBands(body, [.. profile.Bands.Select((band, i) => (Outline(body, band.From, band.To), BandLights.Together(lights, i)))], firstToLast, odds);
    }

    // By how much wider the gap at one end is than that at the other.
    private static double FirstToLast(IReadOnlyList<(double From, double To, LinearRgb Colour)> bands)
    {
        if (bands.Count < 3) return 1;
        double Middle(int i) => (bands[i].From + bands[i].To) / 2;
        var log = Elementary.Log((Middle(bands.Count - 1) - Middle(bands.Count - 2)) / (Middle(1) - Middle(0)));
        double Density(double mean) => Elementary.Exp(-0.5 * (log - mean) * (log - mean) / (GapU * GapU));
        // Gaps of any other kind are believed in a little.
        const double odd = 0.02;
        return ((WithGap * Density(GapLog)) + ((1 - WithGap) * Density(0)) + odd) / ((WithGap * Density(-GapLog)) + ((1 - WithGap) * Density(0)) + odd);
    }

    private static PictureRegion Outline(PictureRegion body, double from, double to) => new(body.At(((from + to) / 2) - 0.5, 0), (to - from) * body.Width, body.Height, body.Turn);
}
