namespace Lidoff.Numbers.Typed.Codes;

/// <summary>A reading of a code with how likely it is.</summary>
/// <param name="Reading">What it says.</param>
/// <param name="As">The text it was read from: the given one, or what that reads on its head.</param>
/// <param name="OnHead">True where it was read from its other end.</param>
/// <param name="P">Its probability among all readings and none of them.</param>
public sealed record WeighedCode(CodeReading Reading, string As, bool OnHead, double P);
