using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Pictures;

namespace Lidoff.Seeing.Kinds;

/// <summary>Where another picture of a mark shows one of its lines.</summary>
/// <param name="Picture">Which of the pictures, from 0.</param>
/// <param name="Outline">Corners there, clockwise from the text's own top left, px.</param>
public sealed record LineElsewhere(int Picture, ValueList<PicturePoint> Outline);
