namespace Lidoff.Seeing.Composing;

/// <summary>A picture made of pictures, and what is to be known about it.</summary>
public sealed record Composition
{
    /// <summary>The picture: PNG, pixels alone.</summary>
    public required byte[] Picture { get; init; }

    /// <summary>A second picture (heights of a stack, relief of a light set); null where there is none.</summary>
    public byte[]? Second { get; init; }

    /// <summary>Content hashes of what it is made of, in the order in which they were taken.</summary>
    public required IReadOnlyList<string> Inputs { get; init; }

    /// <summary>Content hashes of what was given and left out.</summary>
    public IReadOnlyList<string> LeftOut { get; init; } = [];

    /// <summary>What it was made with: everything that moves a pixel.</summary>
    public required string Settings { get; init; }

    /// <summary>Program and library that made it.</summary>
    public required string Program { get; init; }

    /// <summary>
    /// Where the first input's corner lies in it, px, where one of its px is one of that input's: a known length of that input then holds
    /// in it too. Null where its geometry is its own.
    /// </summary>
    public (double X, double Y)? FirstAt { get; init; }

    /// <summary>What is left between its inputs where they should meet, px, root mean square; null where nothing has to meet.</summary>
    public double? RestPx { get; init; }

    /// <summary>The same around the worst closed loop; null where no loop closes.</summary>
    public double? LoopPx { get; init; }

    /// <summary>Heights of the darkest and the brightest value of <see cref="Second"/>: slices, or mm where the step is known; null where it holds no heights.</summary>
    public (double From, double To)? Heights { get; init; }

    /// <summary>True when <see cref="Heights"/> are mm.</summary>
    public bool HeightsInMm { get; init; }

    /// <summary>What a person should know of how it came out, a sentence each.</summary>
    public IReadOnlyList<string> Says { get; init; } = [];
}
