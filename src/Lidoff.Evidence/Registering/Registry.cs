using System.Reflection;
using Lidoff.Numbers.Failing;

namespace Lidoff.Evidence.Registering;

/// <summary>
/// Items found by type: every public sealed class with a public parameterless constructor that is assignable to the item
/// type. Adding an item is adding a file; nothing lists it.
/// </summary>
public static class Registry
{
    /// <summary>All items of <typeparamref name="T"/> in <paramref name="assemblies"/>, by name; two of one name throw.</summary>
    public static Registry<T> Of<T>(params IEnumerable<Assembly> assemblies)
        where T : class, INamed => Of<T>(item => item.Name, assemblies);

    /// <summary>The same for items whose name stands elsewhere.</summary>
    public static Registry<T> Of<T>(Func<T, string> name, params IEnumerable<Assembly> assemblies)
        where T : class =>
        new([.. Types<T>(assemblies).Where(Fits).Select(t => (T)Activator.CreateInstance(t)!)], name);

    /// <summary>
    /// Concrete classes assignable to <typeparamref name="T"/> that would not be found, by full name: not public, not sealed,
    /// generic, or without a public parameterless constructor. An architecture test keeps this empty.
    /// </summary>
    public static IReadOnlyList<Type> NearMisses<T>(params IEnumerable<Assembly> assemblies) =>
        [.. Types<T>(assemblies).Where(t => !Fits(t))];

    private static IEnumerable<Type> Types<T>(IEnumerable<Assembly> assemblies) => assemblies.Distinct()
        .SelectMany(a => a.GetTypes())
        .Where(t => t is { IsClass: true, IsAbstract: false } && typeof(T).IsAssignableFrom(t))
        .OrderBy(t => t.FullName, StringComparer.Ordinal);

    private static bool Fits(Type t) =>
        t is { IsVisible: true, IsSealed: true, ContainsGenericParameters: false } && t.GetConstructor(Type.EmptyTypes) is not null;
}
