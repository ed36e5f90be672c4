using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Measuring;

namespace Lidoff.Seeing.Kinds;

/// <summary>Two ends in a picture (file name, entry id or start of the file's hash), their height above the board (mm) and the click error (px).</summary>
public sealed record PictureLength(string Picture, PicturePoint From, PicturePoint To, double HeightMm, double ClickPx)
{
    /// <summary>Standard uncertainty of each end along the length, px, where it is known apart from the click: the ends were fitted to edges, or the edge's width was looked at; null otherwise.</summary>
    public (double From, double To)? EndsUPx { get; init; }

    /// <summary>What moved the ends from where they were clicked ("edges 2"); empty where they lie as clicked.</summary>
    public string EndsBy { get; init; } = "";

    /// <summary>Where a person clicked, where the ends were moved from there: both ends, or the corners of a body.</summary>
    public ValueList<PicturePoint> Clicked { get; init; } = [];

    /// <summary>Standard uncertainty of each end as one number, px.</summary>
    public double EachPx => EndsUPx is { } u ? Math.Sqrt(((u.From * u.From) + (u.To * u.To)) / 2) : ClickPx;
}
