namespace Lidoff.Naming.Dates;

/// <summary>One grammar of date codes. A rule is added by adding one file with a public class that has a parameterless constructor.</summary>
public interface IDateRule
{
    /// <summary>The name shown in <c>"rule"</c>.</summary>
    string Name { get; }

    /// <summary>How often a code that fits several grammars turns out to be this one: a weight against the other rules', 0 to 1.</summary>
    double Weight { get; }

    /// <summary>
    /// Every span of weeks that <paramref name="code"/> (upper case, letters and digits only) can mean, with a share that adds up
    /// to one or less over what is returned; empty when the code does not have this shape. Weeks that do not exist are reported to
    /// <paramref name="refuse"/>.
    /// </summary>
    IEnumerable<WeekSpan> Read(string code, Action<string> refuse);
}
