using System.Reflection;
using System.Runtime.InteropServices;
using Lidoff.Numbers.Failing;
using OpenCvSharp;

namespace Lidoff.Seeing.Vision;

/// <summary>
/// The one way to the vision library (OpenCV). Its 114 MB and the system library it wants are asked for when work with several pictures
/// is first started and never before; where they are missing everything else of the room goes on, and one sentence says what is off.
/// </summary>
public sealed class VisionLibrary
{
    private const string Native = "OpenCvSharpExtern";

    private readonly Lazy<Fault?> trouble;

    /// <summary>A library that is looked for by <paramref name="load"/>: it hands back why it cannot be had, or null. Called once, and late.</summary>
    public VisionLibrary(Func<string?> load)
    {
        Guard.NotNull(load);
        trouble = new(() => load() is { } why ? new Fault("vision", "OpenCV's library and what it needs of the system", SeeingSentences.NoVision(why)) : null);
    }

    /// <summary>The library beside this program.</summary>
    public static VisionLibrary OfThisMachine { get; } = new(Load);

    /// <summary>Looks for the library, once. A fault says what is off without it and what to install.</summary>
    public Fault? Trouble => trouble.Value;

    private static string? Load()
    {
        try
        {
            NativeLibrary.Load(Native, typeof(Cv2).Assembly, null);
            SetUp();
            return null;
        }
        catch (Exception missing) when (missing is DllNotFoundException or BadImageFormatException or TypeInitializationException)
        {
            return missing.Message;
        }
    }

    // One thread and one seed: a picture made of pictures must not depend on how many cores the bench has, or on what ran before.
    private static void SetUp()
    {
        Cv2.SetNumThreads(1);
        Cv2.SetTheRNG(1);
    }

    /// <summary>What made a result: this program's version and the library's.</summary>
    internal static string Versions()
    {
        var ours = typeof(VisionLibrary).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion ?? "";
        return $"lidoff {ours}, opencv {Cv2.GetVersionString()}";
    }
}
