using Lidoff.Seeing.Reading.Engine;
using Lidoff.Seeing.Reading.Finding;

namespace Lidoff.Seeing.Reading.Spots;

/// <summary>A spot's mark as one picture shows it.</summary>
/// <param name="Picture">The picture.</param>
/// <param name="Region">The body that was looked at, px.</param>
/// <param name="Mark">What was scanned; lines that are noise are left out.</param>
/// <param name="Read">The same, weighed by itself.</param>
/// <param name="Says">What is to be said of where it was looked for; empty where the body was found.</param>
public sealed record SpotScan(SpotPicture Picture, PictureRegion Region, ScannedMark Mark, ReadMark Read, string Says = "");
