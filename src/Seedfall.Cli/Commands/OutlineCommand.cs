using System.CommandLine;
using System.Text.Json;
using Seedfall.Cli.Output;
using Seedfall.Exchange.Ground;

namespace Seedfall.Cli.Commands;

/// <summary><c>seedfall outline FILE</c>: what a file of outlines or walks holds, with area, range, edge and faults.</summary>
internal static class OutlineCommand
{
    private static readonly JsonSerializerOptions Json = new() { WriteIndented = true, PropertyNamingPolicy = JsonNamingPolicy.CamelCase };

    internal static Command Make(Streams streams)
    {
        var file = new Argument<FileInfo>("FILE") { Description = "GeoJSON, GPX, KML or KMZ; the kind is told from the bytes." };
        var to = new Option<FileInfo?>("--to") { Description = "Write the outlines as a file; its ending (.geojson, .gpx, .kml, .kmz) says which kind." };
        var json = CommandTree.Json();
        var command = new Command("outline", "Read outlines or a walked edge from a file: area, range, edge, faults.") { file, to, json };
        command.SetAction(parsed => CommandTree.Guard(streams, () => Task.FromResult(Show(parsed.GetValue(file)!, parsed.GetValue(to), parsed.GetValue(json), streams))).Result);
        return command;
    }

    private static int Show(FileInfo file, FileInfo? to, bool json, Streams streams)
    {
        var read = OutlineFiles.Read(InputFile.Bytes(file), file.Name);
        if (!read.IsRead)
        {
            throw new CommandException(ExitCode.BadInput, read.Problem.ToString());
        }

        OutlineReport[] reports = [.. read.Outlines.Select(OutlineReport.Of), .. read.Walks.Select(OutlineReport.Of)];
        if (to is not null)
        {
            Convert(to, reports, read, streams);
        }

        if (json)
        {
            streams.Results.WriteLine(JsonSerializer.Serialize(new { file = file.Name, remarks = read.Remarks, outlines = reports }, Json));
        }
        else
        {
            foreach (var line in reports.SelectMany(r => r.Lines()).Concat(read.Remarks.Select(r => $"Note: {r}.")))
            {
                streams.Results.WriteLine(line);
            }

            foreach (var problem in reports.SelectMany(r => r.Problems.Select(p => $"seedfall: {file.Name}: {r.Name}: {p}")))
            {
                streams.Remarks.WriteLine(problem);
            }
        }

        return Array.TrueForAll(reports, r => r.Sound) ? ExitCode.Done : ExitCode.BadInput;
    }

    private static void Convert(FileInfo to, OutlineReport[] reports, OutlineReadResult read, Streams streams)
    {
        var kind = OutlineFiles.KindOf(to.Name) ?? throw new CommandException(ExitCode.BadInput, $"{to.Name}: expected a name ending in .geojson, .gpx, .kml or .kmz");
        if (Array.Find(reports, r => !r.Sound) is { } fault)
        {
            throw new CommandException(ExitCode.BadInput, [$"{fault.Name}: not sound, so nothing was written", .. fault.Problems]);
        }

        using var folder = new OutputFolder(to.DirectoryName ?? ".");
        folder.Add(to.Name, OutlineFiles.Write(kind, [.. reports.Select(r => r.Drawn!)], kind == OutlineFileKind.Gpx ? read.Walks : []));
        folder.Publish();
        streams.Remarks.WriteLine($"seedfall: {to.Name}: {reports.Length} outline(s) written");
        if (read.Walks.Count > 0)
        {
            streams.Remarks.WriteLine("seedfall: the range of a walked area does not travel with the outline; keep the walk");
        }
    }
}
