using System.Security.Cryptography;
using System.Text;
using CsCheck;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Tests.Folding;
using Lidoff.TestSupport;

namespace Lidoff.Evidence.Tests.Entries;

public class EntryCodecTests
{
    private static readonly DateTimeOffset At = new(2026, 3, 2, 11, 15, 0, 123, TimeSpan.FromHours(1));

    private static readonly EntryId A = new(new string('a', 64)), B = new(new string('b', 64)), C = new(new string('c', 64));

    private static StoredEntry Sealed() => EntryCodec.Seal(
        WordKind.Of("µ") with { By = "Ada \"L\"" }, [C, A], new string('1', 32), 7, A, [C, B], At, new string('2', 32));

    /// <summary>The promise to every later program: these bytes, these keys, this order. A change here needs a new format number.</summary>
    [Fact]
    public void The_stored_bytes_are_these()
    {
        var sealedEntry = Sealed();
        Assert.Equal(
            $$"""{"format":1,"dossier":"tag","kind":"word","kind_version":1,"chain":"11111111111111111111111111111111","seq":7,"previous":"{{A}}","heads":["{{B}}","{{C}}"],"targets":["{{C}}","{{A}}"],"files":[],"at":"2026-03-02T10:15:00.123Z","by":"Ada \"L\"","payload":"{{sealedEntry.Entry.PayloadHash}}"}""",
            Encoding.UTF8.GetString(sealedEntry.Bytes.Span));
        Assert.Equal("""{"_salt":"22222222222222222222222222222222","text":"µ"}""", Encoding.UTF8.GetString(sealedEntry.Payload!.Value.Span));
    }

    /// <summary>The name is plain SHA-256 of the bytes, so that anybody's tool can check it.</summary>
    [Fact]
    public void The_name_is_the_sha256_of_the_bytes() =>
        Assert.Equal(Convert.ToHexString(SHA256.HashData(Sealed().Bytes.Span)).ToLowerInvariant(), Sealed().Id.Hex);

    /// <summary>FIPS 180-2, appendix B.1: SHA-256 of "abc".</summary>
    [Fact]
    public void Hash_gives_the_published_value_for_abc() =>
        Assert.Equal("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad", EntryCodec.Hash("abc"u8));

    [Fact]
    public void What_is_read_is_what_was_written()
    {
        var written = Sealed().Entry;
        var read = EntryCodec.Read(Sealed().Bytes).Value;
        Assert.Equal(written.Heads, read.Heads);
        Assert.Equal(written.Targets, read.Targets);
        Assert.Equal(written with { Heads = [], Targets = [], Files = [] }, read with { Heads = [], Targets = [], Files = [] });
        Assert.Equal(TimeSpan.Zero, read.At.Offset);
    }

    [Theory]
    [InlineData("", "An entry header cannot be read. Line 1, byte 1: this is not JSON.")]
    [InlineData("{\"format\":1", "An entry header cannot be read. Line 1, byte 12: this is not JSON.")]
    [InlineData("[]", "A line should be an object { … }.")]
    public void Broken_bytes_say_so(string bytes, string say) => Assert.Equal(say, EntryCodec.Read(Encoding.UTF8.GetBytes(bytes)).Faults[0].Say);

    [Fact]
    public void A_first_entry_has_no_previous_one_and_every_other_has()
    {
        var text = Encoding.UTF8.GetString(Sealed().Bytes.Span);
        var faults = EntryCodec.Read(Encoding.UTF8.GetBytes(text.Replace("\"seq\":7", "\"seq\":1", StringComparison.Ordinal))).Faults;
        Assert.Equal("\"previous\" should be missing in the first entry of a chain and there in every other.", Assert.Single(faults).Say);
    }

    [Fact]
    public void Chains_of_one_seed_differ_by_dossier_and_tell_nothing_of_the_name_of_the_process()
    {
        var seed = Seeds.Of("ada");
        Assert.NotEqual(seed.Chain("tag"), seed.Chain("band"));
        Assert.Equal(seed.Chain("tag"), Seeds.Of("ada").Chain("tag"));
        Assert.NotEqual(seed.Salt(seed.Chain("tag"), 1), seed.Salt(seed.Chain("tag"), 2));
    }

    /// <summary>A spoilt header is either refused or another entry by name; it never passes for the one it was.</summary>
    [Fact]
    public void A_spoilt_header_never_keeps_its_name()
    {
        var good = Sealed();
        Gen.Select(Gen.Int[0, good.Bytes.Length - 1], Gen.Byte[1, 255]).Sample(
            (at, flip) =>
            {
                var bytes = good.Bytes.ToArray();
                bytes[at] ^= flip;
                Assert.True(!EntryCodec.Read(bytes).TryValue(out var read) || read.Id != good.Id);
            },
            iter: 3_000);
    }

    [Fact]
    public void Random_bytes_do_not_throw() => Gen.Byte.Array[0, 200].Sample(bytes => Assert.True(!EntryCodec.Read(bytes).Ok), iter: 2_000);
}
