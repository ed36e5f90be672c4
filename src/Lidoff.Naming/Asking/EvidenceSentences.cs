using System.Globalization;
using Lidoff.Numbers.Failing;

namespace Lidoff.Naming.Asking;

/// <summary>Every sentence about a line of evidence that a person may see.</summary>
public static class EvidenceSentences
{
    /// <summary>JSON, but no object.</summary>
    public static Fault NotAnObject(int line) => new(string.Create(CultureInfo.InvariantCulture, $"line {line}"), "an object with \"evidence\"",
        string.Create(CultureInfo.InvariantCulture, $"Line {line} holds no object; write {{\"id\":…,\"evidence\":{{…}}}}."));

    /// <summary>A key with a value of the wrong shape.</summary>
    public static Fault Wrong(string key, string expected) => new("evidence." + key, expected, $"'{key}' should be {expected}.");

    /// <summary>A key this program does not know.</summary>
    public static string Unknown(string key) => $"'{key}' is not a key of evidence; it was left out.";

    /// <summary>Letters of another alphabet that look Latin.</summary>
    public static string OtherAlphabet(string text) => $"'{text}' holds letters of another alphabet that look like Latin ones; they were read as Latin.";
}
