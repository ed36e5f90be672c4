namespace Lidoff.Numbers.Failing;

/// <summary>
/// One named thing that is wrong with something from outside. <paramref name="Where"/> is the place (a key, a line, a
/// column, a file name), <paramref name="Expected"/> what would have been right, <paramref name="Say"/> the whole
/// sentence shown to a person. The sentences stand in one file a room, named <c>…Sentences</c>; tests assert them.
/// </summary>
public sealed record Fault(string Where, string Expected, string Say);
