namespace Lidoff.Catalogue.Importing;

/// <summary>How large an import may be. Far above any list a person keeps, far below what a machine chokes on.</summary>
public static class ImportLimits
{
    /// <summary>Bytes of one file.</summary>
    public const int Bytes = 256 * 1024 * 1024;

    /// <summary>Parts of one file.</summary>
    public const int Rows = 1_000_000;

    /// <summary>Characters of one line of a table or of JSON.</summary>
    public const int LineLength = 1_000_000;

    /// <summary>Nesting of a symbol library; real ones stay below ten.</summary>
    public const int Depth = 64;

    /// <summary>Faults that are listed one by one.</summary>
    public const int Faults = 200;
}
