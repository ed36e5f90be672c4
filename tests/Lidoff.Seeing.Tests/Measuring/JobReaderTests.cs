using System.Text;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Measuring;

namespace Lidoff.Seeing.Tests.Measuring;

public sealed class JobReaderTests
{
    private const string Contract = """
        {"image":"board.jpg","reference":[{"from":[100,100],"to":[320,100],"length_mm":5.5,"u_mm":0.02,"height_mm":0}],"click_u_px":1.0,"camera_distance_mm":null,
         "target":[{"id":"U1 width","from":[100,200],"to":[379.2,200],"height_mm":1.0}]}
        """;

    [Fact]
    public void The_example_of_the_contract_reads_and_measures()
    {
        var job = Read(Contract).Value;
        Assert.Equal("board.jpg", job.Image);
        Assert.Null(job.CameraDistanceMm);
        Assert.Empty(job.UnknownKeys);
        var json = Measured.Json(Measurement.Run(job, new(1000, 800)).Value);
        Assert.StartsWith("{\"targets\":[{\"id\":\"U1 width\",\"value_mm\":6.", json, StringComparison.Ordinal);
        Assert.Contains("\"warnings\":[{\"code\":\"other-plane\",\"say\":\"This length stands 1 mm above", json, StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_job_gives_the_same_bytes()
    {
        // Snapshot of the output format: keys, order, number form. The numbers are this program's own.
        var job = Read(Contract.Replace("\"height_mm\":1.0", "\"height_mm\":0", StringComparison.Ordinal)).Value;
        var json = Measured.Json(Measurement.Run(job, new(4000, 3000)).Value);
        Assert.Matches(
            "^\\{\"targets\":\\[\\{\"id\":\"U1 width\",\"value_mm\":6\\.9[78]\\d*,\"u_mm\":0\\.\\d+,\"interval90_mm\":\\[6\\.\\d+,7\\.\\d+\\],"
            + "\"snap\":\\{\"mm\":7,\"kind\":\"body\",\"likelihood_ratio\":\\d+(\\.\\d)?\\},\"warnings\":\\[\\]\\}\\]\\}$",
            json);
    }

    [Fact]
    public void A_job_without_anything_of_known_size_is_told_all_five_ways_to_give_it()
    {
        var fault = Assert.Single(Read("""{"image":"x","target":[{"id":"a","from":[0,0],"to":[1,1]}]}""").Faults);
        Assert.Equal("reference", fault.Where);
        Assert.Equal(
            "The job says nothing of known size. Give “reference” (a length that is known: from, to, length_mm), “points” (four places or more that are known on the board: at, mm), "
            + "“ruler” (a row of its lines: from, to), “pattern” (a checkerboard or dot grid in the picture: pitch_mm) or “calibration” (another picture of one, by the same camera and zoom: image, pitch_mm).",
            fault.Say);
        // Any one of them will do.
        Assert.True(Read("""{"image":"x","pattern":{},"target":[{"id":"a","from":[0,0],"to":[1,1]}]}""").Ok);
        Assert.True(Read("""{"image":"x","ruler":[{"from":[0,0],"to":[9,9]}],"target":[{"id":"a","from":[0,0],"to":[1,1]}]}""").Ok);
        Assert.True(Read("""{"image":"x","points":[{"at":[0,0],"mm":[0,0]}],"target":[{"id":"a","from":[0,0],"to":[1,1]}]}""").Ok);
    }

    [Fact]
    public void Everything_wrong_with_the_whole_job_comes_at_once()
    {
        var faults = Read("""
            {"reference":[{"from":[1,2],"to":"right","length_mm":0},{"from":[1,2],"to":[3,4],"length_mm":1,"u_mm":-1}],"click_u_px":-1,"camera_distance_mm":0,"target":[]}
            """).Faults;
        Assert.Equal(
            ["image", "click_u_px", "camera_distance_mm", "reference[0].to", "reference[0].length_mm", "reference[1].u_mm", "target"],
            faults.Select(fault => fault.Where));
        Assert.Contains(faults, fault => fault.Say == "\"reference[0].length_mm\" should be a number above 0, but here it is 0.");
    }

    [Fact]
    public void Geometry_faults_of_references_come_at_once_and_name_the_picture()
    {
        var job = Read("""
            {"image":"x","reference":[{"from":[10,10],"to":[10,10],"length_mm":1},{"from":[-5,10],"to":[1200,10],"length_mm":1}],
             "target":[{"id":"a","from":[1,1],"to":[2,2]}]}
            """).Value;
        Assert.Equal(
            [
                "“reference[0].from” and its “to” are the same place, so there is no length between them.",
                "“reference[1].from” lies at (-5, 10), outside the picture of 1000 × 800 pixels.",
                "“reference[1].to” lies at (1200, 10), outside the picture of 1000 × 800 pixels.",
            ],
            Measurement.Run(job, new(1000, 800)).Faults.Select(fault => fault.Say));
    }

    [Fact]
    public void A_bad_target_keeps_its_place_and_the_rest_is_measured()
    {
        var job = Read("""
            {"image":"x","reference":[{"from":[0,10],"to":[1000,10],"length_mm":10}],
             "target":[{"id":"a","from":[1,1]},{"id":"b","from":[1,1],"to":[1,1]},{"id":"c","from":[0,0],"to":[2000,0]},{"from":[0,0],"to":[100,0]},{"id":"e","from":[0,0],"to":[500,0]}]}
            """).Value;
        var targets = Measurement.Run(job, new(1000, 800)).Value;
        Assert.Equal(["a", "b", "c", "4", "e"], targets.Select(target => target.Id));
        Assert.Equal([false, false, false, false, true], targets.Select(target => target.Length.Ok));
        Assert.Contains("{\"format\":1,\"id\":\"a\",\"error\":{\"where\":\"to\",\"expected\":\"a point [x, y] of two numbers\"", Measured.Json(targets), StringComparison.Ordinal);
        Assert.Equal("“to” lies at (2000, 0), outside the picture of 1000 × 800 pixels.", targets[2].Length.Faults[0].Say);
    }

    [Fact]
    public void A_thing_as_tall_as_the_camera_is_far_is_refused()
    {
        var job = Read("""
            {"image":"x","reference":[{"from":[0,10],"to":[1000,10],"length_mm":10,"height_mm":60}],"camera_distance_mm":50,"target":[{"id":"a","from":[0,0],"to":[2,0]}]}
            """).Value;
        Assert.Equal("“reference[0].height_mm” is 60 mm, but the camera was only 50 mm from the board.", Measurement.Run(job, new(1000, 800)).Faults[0].Say);
    }

    [Fact]
    public void Not_a_number_infinity_and_repeated_keys_are_refused_with_line_and_place_all_at_once()
    {
        var faults = Read("{\"image\":\"NaN\",\n \"image\":\"y\",\"click_u_px\":NaN,\n \"camera_distance_mm\":-Infinity,\"reference\":[{\"length_mm\":1e999}]}").Faults;
        Assert.Equal(
            [
                "Line 2, character 2: the key “image” is given twice in one object.",
                "Line 2, character 27: NaN is not a finite number.",
                "Line 3, character 23: -Infinity is not a finite number.",
                "Line 3, character 59: 1e999 is not a finite number.",
            ],
            faults.Select(fault => fault.Say));
    }

    [Theory]
    [InlineData("", "Line 1, character 1: this is not JSON from here on.")]
    [InlineData("{\"image\":\n]", "Line 2, character 1: this is not JSON from here on.")]
    [InlineData("[]", "A line should be an object { … }.")]
    public void What_is_no_job_gives_a_sentence(string text, string say) => Assert.Equal(say, Read(text).Faults[0].Say);

    [Fact]
    public void Unknown_keys_are_named_and_left_out()
    {
        var job = Read("""{"image":"x","dpi":300,"reference":[{"from":[0,1],"to":[2,3],"length_mm":1,"note":""}],"target":[{"id":"a","from":[0,0],"to":[1,1],"colour":1}]}""").Value;
        Assert.Equal(["dpi", "reference[0].note", "target[0].colour"], job.UnknownKeys);
    }

    private static Outcome<MeasureJob> Read(string text) => MeasureJobReader.Read(Encoding.UTF8.GetBytes(text));
}
