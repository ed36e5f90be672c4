using Lidoff.Evidence.Entries;

namespace Lidoff.Seeing.Kinds;

/// <summary>Where a mark was looked for in a picture.</summary>
/// <param name="Picture">Content hash of the picture.</param>
/// <param name="At">The place pointed at (x, y), the box around it (x, y, width, height), or the outline of its body (middle x and y, width, height, turn clockwise in radians), px.</param>
public sealed record UnreadPlace(string Picture, ValueList<double> At);
