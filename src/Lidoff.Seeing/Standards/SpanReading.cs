namespace Lidoff.Seeing.Standards;

/// <summary>One reading of a span: value and standard uncertainty, mm, both above zero. Readings are taken as independent.</summary>
public sealed record SpanReading(double Mm, double UMm);
