namespace Lidoff.Seeing.Boards;

/// <summary>A picture that could not be laid on the board, and the sentence that says why and what would help.</summary>
public sealed record LeftOutPicture(string Sha256, string Name, string Says);
