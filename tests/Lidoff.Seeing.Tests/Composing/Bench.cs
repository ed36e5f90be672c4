using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Working;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Composing;
using Lidoff.Seeing.Pictures;
using Lidoff.Seeing.Tests.Pictures;
using Lidoff.Seeing.Vision;
using NetVips;
using OpenCvSharp;

namespace Lidoff.Seeing.Tests.Composing;

/// <summary>A folder of pictures as a camera writes them: JPEG at the quality of a phone, with the noise of its sensor.</summary>
internal sealed class Bench : IDisposable
{
    private readonly TemporaryFolder folder = new();

    public List<SourcePicture> Pictures { get; } = [];

    public void Dispose() => folder.Dispose();

    /// <summary>Writes red-green-blue pixels as the next picture.</summary>
    public SourcePicture Add(byte[] pixels, int width, int height, int quality = 90, Action<MutableImage>? tags = null)
    {
        var name = FormattableString.Invariant($"p{Pictures.Count + 1:00}.jpg");
        var path = folder.File(name);
        using (var image = Image.NewFromMemory(pixels, width, height, 3, Enums.BandFormat.Uchar).Copy(interpretation: Enums.Interpretation.Srgb))
        {
            using var tagged = tags is null ? image.Copy() : image.Mutate(tags);
            tagged.Jpegsave(path, q: quality);
        }

        var header = PictureFile.Read(path, name).Value;
        var hash = Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(File.ReadAllBytes(path)));
        Pictures.Add(new(path, name, hash, header));
        return Pictures[^1];
    }

    public Outcome<Composition> Make(ComposeMethod method, double? step = null, IEnumerable<int>? order = null) =>
        new Composer(VisionLibrary.OfThisMachine).Make(new(method, [.. (order ?? Enumerable.Range(0, Pictures.Count)).Select(i => Pictures[i])], step), Quiet.Instance);

    /// <summary>A made picture again as pixels.</summary>
    public static Mat Opened(byte[] png) => Cv2.ImDecode(png, ImreadModes.Unchanged);

    internal sealed class Quiet : IJobReport
    {
        public static Quiet Instance { get; } = new();

        public CancellationToken Stop => CancellationToken.None;

        public void Say(long done, long total, string words)
        {
        }
    }
}
