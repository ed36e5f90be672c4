using Lidoff.Evidence.Working;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Vision;

namespace Lidoff.Seeing.Composing;

/// <summary>Makes a picture of pictures. What cannot be put together is refused with a sentence; nothing is written here.</summary>
public sealed class Composer(VisionLibrary library)
{
    /// <summary>Fewest pictures a method takes.</summary>
    public static int Fewest(ComposeMethod method) => method is ComposeMethod.Stitch or ComposeMethod.Average ? 2 : 3;

    /// <summary>Most pictures at once.</summary>
    public const int Most = 100;

    /// <summary>Makes it. Stopping throws, as jobs do.</summary>
    public Outcome<Composition> Make(ComposeOrder order, IJobReport report)
    {
        Guard.NotNull(order);
        Guard.NotNull(report);
        if (order.Pictures.Count < Fewest(order.Method)) return Refused(ComposingSentences.TooFew(order.Method, Fewest(order.Method), order.Pictures.Count));
        if (order.Pictures.Count > Most) return Refused(ComposingSentences.TooMany(Most, order.Pictures.Count));
        if (order.Pictures.GroupBy(each => each.Sha256).FirstOrDefault(same => same.Count() > 1) is { } twice) return Refused(ComposingSentences.Twice(twice.First().Name));
        if (library.Trouble is { } trouble) return trouble;
        try
        {
            return order.Method switch
            {
                ComposeMethod.Stack => FocusStack.Make(order, report),
                ComposeMethod.Stitch => Stitching.Make(order, report),
                ComposeMethod.Lights => LightSet.Make(order, report),
                _ => BurstAverage.Make(order, report),
            };
        }
        catch (RefusedException refused)
        {
            return refused.Fault;
        }
    }

    private static Fault Refused(string says) => new("pictures", "pictures that go together", says);
}
