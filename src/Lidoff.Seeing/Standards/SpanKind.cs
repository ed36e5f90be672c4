namespace Lidoff.Seeing.Standards;

/// <summary>What was measured over a row of leads or ways.</summary>
public enum SpanKind
{
    /// <summary>From the middle of the first to the middle of the last: one gap fewer than leads.</summary>
    FirstToLast,

    /// <summary>Width of a flat cable: about one gap more than ways, half of it beyond each outer way.</summary>
    CableWidth,
}
