using Lidoff.Numbers.Failing;

namespace Lidoff.Reckoning.Bound;

/// <summary>Where reckonings find what other rooms measured; filled in by who knows all rooms.</summary>
public interface IInputSource
{
    /// <summary>The value under a reference such as <c>length:U1:long side</c>, or why there is none, placed at <paramref name="where"/>.</summary>
    Outcome<SourcedInput> Find(string reference, string where);
}
