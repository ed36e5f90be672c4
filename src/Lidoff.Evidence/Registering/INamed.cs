namespace Lidoff.Evidence.Registering;

/// <summary>An item of a registry. Its name is unique there and is what people and files call it by.</summary>
public interface INamed
{
    /// <summary>Unique among its kind, ordinally.</summary>
    string Name { get; }
}
