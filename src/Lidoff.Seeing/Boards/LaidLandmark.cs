using Lidoff.Evidence.Pictures;

namespace Lidoff.Seeing.Boards;

/// <summary>A landmark on the board.</summary>
/// <param name="Name">Its name.</param>
/// <param name="At">Where, mm seen from the top.</param>
/// <param name="Spread">Its doubt, mm².</param>
/// <param name="Pictures">How many pictures it was used in.</param>
public sealed record LaidLandmark(string Name, BoardPoint At, PictureSpread Spread, int Pictures);
