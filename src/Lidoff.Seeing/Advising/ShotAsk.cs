namespace Lidoff.Seeing.Advising;

/// <summary>What is to be photographed, and with what.</summary>
/// <param name="LetterMm">Height of the smallest letter that must be read, mm, 0.02 to 50.</param>
/// <param name="FieldMm">Longer side of what must be in the picture, mm, 0.1 to 2000.</param>
/// <param name="CameraPx">Longer side of a frame, px, 100 to 100,000.</param>
/// <param name="PixelUm">Pitch of the sensor's pixels, µm, 0.3 to 50.</param>
/// <param name="ReliefMm">Height from the board to the top of its tallest part, mm, 0 to 200.</param>
/// <param name="DistanceMm">From the lens to the board, mm, 5 to 5000.</param>
public sealed record ShotAsk(double LetterMm, double FieldMm, double CameraPx, double PixelUm, double ReliefMm, double DistanceMm);
