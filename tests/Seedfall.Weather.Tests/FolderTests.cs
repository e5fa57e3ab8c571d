using static Seedfall.Weather.Tests.Files;
using static Seedfall.Weather.Tests.Samples;

namespace Seedfall.Weather.Tests;

public sealed class FolderTests : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("seedfall-weather-");

    public void Dispose() => _folder.Delete(recursive: true);

    private void Put(string name, byte[] content) => File.WriteAllBytes(Path.Combine(_folder.FullName, name), content);

    private void Put(string name, string content) => File.WriteAllText(Path.Combine(_folder.FullName, name), content);

    [Fact]
    public void All_weather_files_of_a_folder_are_read_whatever_their_names()
    {
        Put("b.dat", UscrnDailyLine);
        Put("a", Gzip(System.Text.Encoding.ASCII.GetBytes(UscrnDay("20260902", 20, 10, 0))));
        Put("README.md", "# About\n");
        Put("lawn.json", "{ \"name\": \"an invented lawn\" }");
        Put(".hidden", "x");
        var result = Good(WeatherFiles.Read([_folder.FullName]));
        Assert.Equal(2, result.History!.Days.Count);
        Assert.Equal(["a", "b.dat"], result.Report!.Files.Select(f => f.Name));
        Assert.Contains(result.Report.Notes, n => n.StartsWith("README.md: passed over", StringComparison.Ordinal));
        Assert.Contains(result.Report.Notes, n => n.StartsWith("lawn.json: passed over", StringComparison.Ordinal));
    }

    [Fact]
    public void A_damaged_weather_file_in_a_folder_is_a_problem_not_passed_over()
    {
        Put("good.txt", UscrnDailyLine);
        Put("bad.txt.gz", Gzip(System.Text.Encoding.ASCII.GetBytes(UscrnDay("20260902", 20, 10, 0)))[..60]);
        Assert.Equal("bad.txt.gz", Refused(WeatherFiles.Read([_folder.FullName])).File);
    }

    [Fact]
    public void A_cut_answer_of_the_power_service_in_a_folder_is_a_problem()
    {
        Put("good.txt", UscrnDailyLine);
        Put("power.json", PowerDaily[..600]);
        Assert.Equal("power.json", Refused(WeatherFiles.Read([_folder.FullName])).File);
    }

    [Fact]
    public void Empty_folders_absent_paths_and_folders_without_weather_are_named()
    {
        Assert.Contains("no files", Refused(WeatherFiles.Read([_folder.FullName])).Found, StringComparison.Ordinal);
        Assert.Equal("nothing of that name", Refused(WeatherFiles.Read([Path.Combine(_folder.FullName, "absent")])).Found);
        Put("notes.txt", "nothing here\n");
        Assert.Equal("none that is known here", Refused(WeatherFiles.Read([_folder.FullName])).Found);
    }

    [Fact]
    public void Problems_of_all_files_come_together()
    {
        Put("a.csv", "date,tmax_c,tmin_c\n2023-09-05,1,0\n");
        Put("b.csv", "date,tmax_c,rain_mm\n2023-09-05,1,0\n");
        Assert.Equal(["a.csv", "b.csv"], WeatherFiles.Read([_folder.FullName]).Problems.Select(p => p.File));
    }
}
