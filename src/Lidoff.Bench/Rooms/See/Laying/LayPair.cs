using Lidoff.Evidence.Pictures;

namespace Lidoff.Bench.Rooms.See.Laying;

/// <summary>One proposed landmark in both pictures.</summary>
/// <param name="Name">The name proposed.</param>
/// <param name="Here">Where it shows in this picture, px.</param>
/// <param name="There">Where in the other, px.</param>
/// <param name="Rest">How far it lies from where all together put it, "12 µm" or "0.4 px".</param>
/// <param name="TakenOver">True where both pictures have it as a landmark.</param>
public sealed record LayPair(string Name, PicturePoint Here, PicturePoint There, string Rest, bool TakenOver);
