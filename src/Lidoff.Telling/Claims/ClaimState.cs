namespace Lidoff.Telling.Claims;

/// <summary>How a claim stands against what was published of it.</summary>
public enum ClaimState
{
    /// <summary>As published, or never published.</summary>
    Same,

    /// <summary>A number moved within its published 90 % interval.</summary>
    Moved,

    /// <summary>A number left its published 90 % interval.</summary>
    Outside,

    /// <summary>A name or verdict changed.</summary>
    Flipped,

    /// <summary>Something it leans on is gone.</summary>
    Lost,

    /// <summary>It changed although what it leans on did not: the program did.</summary>
    ProgramChanged,
}
