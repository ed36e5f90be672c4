using System.Buffers.Binary;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Registering;
using Lidoff.Evidence.Store;
using Lidoff.Evidence.Working;
using Lidoff.Seeing.Pictures;
using Lidoff.TestSupport;
using NetVips;

namespace Lidoff.Seeing.Tests.Pictures;

/// <summary>Bad pictures on the whole way: into a dossier, header, check, thumbnail, tiles, shared copy. Each says one sentence, and each is kept byte for byte.</summary>
public sealed class BadPictureTests : IDisposable
{
    private const string Cut = " whose pixels cannot be read to the end: cut off or damaged. Copy it again from where it came.";
    private readonly TempFolder folder = new();
    private readonly Workspace workspace;
    private readonly DossierSession session;

    public BadPictureTests()
    {
        workspace = Workspace.Open(folder.Path, Seeds.Of("bad pictures"), new SteppingClock()).Value;
        Assert.True(DossierSession.Begin(workspace, "bad").Ok);
        session = DossierSession.Open(workspace, "bad", new EvidenceKinds([new FileKind(), new DossierKind()])).Value;
    }

    public void Dispose()
    {
        workspace.Dispose();
        folder.Dispose();
    }

    public static TheoryData<string, string> Cuts => new()
    {
        { "cut.jpg", "a JPEG picture" }, { "cut.png", "a PNG picture" }, { "cut.tif", "a TIFF picture" }, { "cut.webp", "a WebP picture" }, { "cut.gif", "a GIF picture" }, { "cut.heic", "a HEIC picture" },
    };

    [Theory]
    [MemberData(nameof(Cuts))]
    public void Cut_off(string name, string says)
    {
        var whole = Bytes(name);
        var (path, fact) = Take(name, whole[..(whole.Length * 2 / 3)]);
        Assert.StartsWith("image/", fact.Type, StringComparison.Ordinal);
        var quoted = $"“{name}”";
        var said = Assert.Single(PictureFile.Check(path, name).Faults).Say;
        Assert.True(said == $"{quoted} is {says}{Cut}" || said == $"{quoted} begins like {says}, but its header cannot be read.", said);
        // Whatever can still be shown is shown; what cannot gives the same sentence and no exception.
        if (PictureFile.Read(path, name) is not { Ok: true } header) return;
        Assert.All(Sentences(path, name, header.Value), sentence => Assert.Equal($"{quoted} is {says}{Cut}", sentence));
    }

    [Theory]
    [InlineData("zero.jpg", "", "an empty file")]
    [InlineData("text.png", "not a picture\n", "a text")]
    [InlineData("page.heic", "%PDF-1.7\n", "a PDF document")]
    public void What_only_its_name_calls_a_picture(string name, string content, string says)
    {
        var (path, _) = Take(name, System.Text.Encoding.ASCII.GetBytes(content));
        Assert.Equal($"“{name}” is {says}, not a picture Lidoff can open (JPEG, PNG, TIFF, WebP, GIF, AVIF, HEIC).", Assert.Single(PictureFile.Read(path, name).Faults).Say);
        Assert.Equal(PictureFile.Read(path, name).Faults, PictureFile.Check(path, name).Faults);
    }

    [Theory]
    [InlineData("a.png", "whole.jpg", "image/jpeg")]
    [InlineData("a.jpg", "whole.heic", "image/heic")]
    [InlineData("a.txt", "whole.webp", "image/webp")]
    public void A_wrong_ending_is_no_hindrance(string name, string kind, string type)
    {
        var (path, fact) = Take(name, Bytes(kind));
        Assert.Equal(type, fact.Type);
        Assert.Empty(Sentences(path, name, PictureFile.Check(path, name).Value));
    }

    [Fact]
    public void Two_gigapixels_are_refused_by_their_headers()
    {
        // JPEG (ITU-T T.81, B.2.2) has two bytes a side: enough to claim them.
        var jpeg = Bytes("whole.jpg");
        var frame = jpeg.AsSpan().IndexOf([(byte)0xFF, (byte)0xC0]);
        BinaryPrimitives.WriteUInt16BigEndian(jpeg.AsSpan(frame + 5), 46_341);
        BinaryPrimitives.WriteUInt16BigEndian(jpeg.AsSpan(frame + 7), 46_341);
        var (path, _) = Take("huge.jpg", jpeg);
        const string sentence = "“huge.jpg” would have 46341 × 46341 pixels (2147 megapixels); Lidoff opens at most 400 megapixels and 65500 pixels a side.";
        Assert.Equal(sentence, Assert.Single(PictureFile.Read(path, "huge.jpg").Faults).Say);
        Assert.Equal(sentence, Assert.Single(PictureFile.Check(path, "huge.jpg").Faults).Say);
    }

    [Fact]
    public void A_jpeg_that_claims_more_rows_than_it_has_says_so()
    {
        var jpeg = Bytes("whole.jpg");
        var frame = jpeg.AsSpan().IndexOf([(byte)0xFF, (byte)0xC0]);
        BinaryPrimitives.WriteUInt16BigEndian(jpeg.AsSpan(frame + 5), 4000);
        var (path, _) = Take("lies.jpg", jpeg);
        Assert.Contains("The picture's data has errors or does not fill the size that its header claims; what could not be read is shown grey.", PictureFile.Check(path, "lies.jpg").Value.Remarks);
        Assert.Empty(Sentences(path, "lies.jpg", PictureFile.Read(path, "lies.jpg").Value));
    }

    [Fact]
    public void Noise_in_the_middle_never_throws()
    {
        foreach (var name in new[] { "whole.jpg", "whole.png", "whole.tif", "whole.webp", "whole.gif", "whole.heic" })
        {
            for (var seed = 0; seed < 12; seed++)
            {
                var bytes = Bytes(name);
                var state = (uint)seed + 1;
                // A fixed run of wrong bytes, set anew for each seed (Numerical Recipes' linear congruence).
                for (var i = 0; i < 40; i++)
                {
                    state = (state * 1664525) + 1013904223;
                    bytes[16 + (int)(state % (uint)(bytes.Length - 16))] = (byte)(state >> 24);
                }

                var (path, _) = Take(name, bytes);
                var check = PictureFile.Check(path, name);
                Assert.True(check.Ok || check.Faults.Count == 1);
                if (PictureFile.Read(path, name) is { Ok: true } header) Assert.All(Sentences(path, name, header.Value), sentence => Assert.Contains(name, sentence, StringComparison.Ordinal));
            }
        }
    }

    /// <summary>What thumbnail, tiles and shared copy say.</summary>
    private List<string> Sentences(string path, string name, PictureHeader header)
    {
        var sha = Path.GetFileName(Path.GetDirectoryName(path)!) + Path.GetFileName(path);
        return
        [
            .. Thumbnail.Jpeg(path, name, header, 40).Faults.Concat(TilePyramid.Make(path, name, header, sha, workspace.CacheFolder, new Still()).Faults)
                .Concat(SharedCopy.Write(path, name, header, new MemoryStream()).Faults).Select(fault => fault.Say),
        ];
    }

    private (string Path, FileAdded Fact) Take(string name, byte[] bytes)
    {
        var taken = FileTaking.Take(workspace, session, new MemoryStream(bytes), name, "add", FileRecognisers.Found()).Value;
        var path = workspace.Files.PathOf(taken.Fact.Sha256);
        Assert.Equal(bytes, File.ReadAllBytes(path));
        return (path, taken.Fact);
    }

    private static byte[] Bytes(string name)
    {
        if (name.EndsWith(".heic", StringComparison.Ordinal)) return SmallHeic.Bytes;
        using var noise = (Image.Gaussnoise(300, 200, sigma: 30, mean: 128, seed: 7).Gaussblur(1) * 1.0).Bandjoin(90, 140).Cast(Enums.BandFormat.Uchar).Copy(interpretation: Enums.Interpretation.Srgb);
        return Path.GetExtension(name) switch
        {
            ".jpg" => noise.JpegsaveBuffer(q: 90),
            ".png" => noise.PngsaveBuffer(),
            ".tif" => noise.TiffsaveBuffer(),
            ".webp" => noise.WebpsaveBuffer(),
            _ => noise.GifsaveBuffer(),
        };
    }

    private sealed class Still : IJobReport
    {
        public CancellationToken Stop => CancellationToken.None;

        public void Say(long done, long total, string words)
        {
        }
    }
}
