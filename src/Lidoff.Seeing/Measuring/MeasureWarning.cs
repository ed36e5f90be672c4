namespace Lidoff.Seeing.Measuring;

/// <summary>Something about a length that a person should know, with its cause. <paramref name="Code"/> is one of <see cref="WarningCodes"/>.</summary>
public sealed record MeasureWarning(string Code, string Say);
