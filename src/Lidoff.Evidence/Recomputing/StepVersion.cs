using System.Collections.Concurrent;
using System.Reflection;
using System.Security.Cryptography;
using System.Text;

namespace Lidoff.Evidence.Recomputing;

/// <summary>
/// The version of a step: a hash of the assembly that holds it and of what that uses. Builds here are deterministic, so an
/// assembly's module id is a hash of its code: the same source gives the same version on every machine.
/// </summary>
public static class StepVersion
{
    private static readonly ConcurrentDictionary<Assembly, string> Known = [];

    /// <summary>
    /// 64 lower-case hex digits. Assemblies of the same family (same word before the first dot) count with their module
    /// id, all that they use among them included; foreign ones with name and version, since a patched base library must
    /// not make every claim say "program changed".
    /// </summary>
    public static string Of(Assembly assembly) => Known.GetOrAdd(assembly, Hash);

    private static string Hash(Assembly assembly)
    {
        var family = Family(assembly.GetName().Name);
        var lines = new SortedSet<string>(StringComparer.Ordinal);
        var seen = new HashSet<string>(StringComparer.Ordinal);
        var open = new Stack<Assembly>([assembly]);
        while (open.TryPop(out var next))
        {
            var name = next.GetName().Name ?? "";
            if (!seen.Add(name)) continue;
            lines.Add(name + " " + next.ManifestModule.ModuleVersionId.ToString("N"));
            foreach (var used in next.GetReferencedAssemblies())
            {
                if (Family(used.Name) == family) open.Push(Assembly.Load(used));
                else lines.Add(used.Name + " " + used.Version);
            }
        }
        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(string.Join('\n', lines))));
    }

    private static string Family(string? name) => (name ?? "").Split('.')[0];
}
