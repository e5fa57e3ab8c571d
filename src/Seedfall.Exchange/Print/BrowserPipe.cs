using System.Buffers;
using System.Collections.Concurrent;
using System.Diagnostics;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace Seedfall.Exchange.Print;

/// <summary>
/// A headless browser spoken to over two pipes of its own: commands out, answers in, each a JSON text ended by a zero byte.
/// No port is opened, so nobody else on the machine can speak to it.
/// </summary>
internal sealed class BrowserPipe : IAsyncDisposable
{
    private readonly Process _process;
    private readonly DirectoryInfo _profile;
    private readonly Task _reading;
    private readonly SemaphoreSlim _writing = new(1, 1);
    private readonly ConcurrentDictionary<int, TaskCompletionSource<JsonElement>> _waiting = new();
    private int _last;

    private BrowserPipe(Process process, DirectoryInfo profile)
    {
        (_process, _profile) = (process, profile);
        _reading = Task.Run(Read);
    }

    /// <summary>Starts the browser; throws <see cref="PrintException"/> where it cannot be started.</summary>
    public static BrowserPipe Start(string browser)
    {
        var profile = Directory.CreateTempSubdirectory("seedfall-print-");
        var start = new ProcessStartInfo("/bin/sh") { RedirectStandardInput = true, RedirectStandardOutput = true, RedirectStandardError = false, UseShellExecute = false };
        string[] arguments = ["-c", "exec \"$0\" \"$@\" 3<&0 4>&1 </dev/null >/dev/null 2>&1", browser, .. Flags(profile.FullName)];
        Array.ForEach(arguments, start.ArgumentList.Add);
        try
        {
            return new BrowserPipe(Process.Start(start)!, profile);
        }
        catch (System.ComponentModel.Win32Exception e)
        {
            profile.Delete(recursive: true);
            throw new PrintException($"the browser {browser} could not be started: {e.Message}", e);
        }
    }

    /// <summary>Sends one command and gives its result; throws <see cref="PrintException"/> where the browser refuses it or is gone.</summary>
    public async Task<JsonElement> Send(string method, JsonObject parameters, string? session, CancellationToken cancellation)
    {
        var id = Interlocked.Increment(ref _last);
        var answer = new TaskCompletionSource<JsonElement>(TaskCreationOptions.RunContinuationsAsynchronously);
        _waiting[id] = answer;
        if (_reading.IsCompleted)
        {
            answer.TrySetException(Gone());
        }

        var message = new JsonObject { ["id"] = id, ["method"] = method, ["params"] = parameters };
        if (session is not null)
        {
            message["sessionId"] = session;
        }

        await Write(message, cancellation);
        using var registration = cancellation.Register(() => answer.TrySetCanceled(cancellation));
        return await answer.Task;
    }

    public async ValueTask DisposeAsync()
    {
        try
        {
            _process.Kill(entireProcessTree: true);
            await _process.WaitForExitAsync();
            await _reading;
        }
        catch (InvalidOperationException)
        {
            // It had ended by itself.
        }

        _process.Dispose();
        _writing.Dispose();
        RemoveProfile();
    }

    private static IEnumerable<string> Flags(string profile) =>
    [
        "--headless",
        "--disable-gpu",
        "--no-first-run",
        "--no-default-browser-check",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-default-apps",
        "--disable-extensions",
        "--disable-sync",
        "--disable-quic",
        "--disable-breakpad",
        "--mute-audio",
        "--proxy-server=127.0.0.1:9",
        "--remote-debugging-pipe",
        $"--user-data-dir={profile}",
        .. Environment.IsPrivilegedProcess ? new[] { "--no-sandbox" } : [],
        "about:blank",
    ];

    private async Task Write(JsonObject message, CancellationToken cancellation)
    {
        var bytes = new ArrayBufferWriter<byte>();
        using (var writer = new Utf8JsonWriter(bytes))
        {
            message.WriteTo(writer);
        }

        bytes.Write<byte>([0]);
        await _writing.WaitAsync(cancellation);
        try
        {
            await _process.StandardInput.BaseStream.WriteAsync(bytes.WrittenMemory, cancellation);
            await _process.StandardInput.BaseStream.FlushAsync(cancellation);
        }
        catch (IOException)
        {
            throw Gone();
        }
        finally
        {
            _writing.Release();
        }
    }

    private async Task Read()
    {
        try
        {
            await ReadMessages(_process.StandardOutput.BaseStream);
        }
        catch (IOException)
        {
            // The pipe broke: as good as its end.
        }

        foreach (var waiting in _waiting.Values)
        {
            waiting.TrySetException(Gone());
        }
    }

    private async Task ReadMessages(Stream stream)
    {
        var (buffer, pending) = (new byte[65536], new MemoryStream());
        while (await stream.ReadAsync(buffer) is var count and > 0)
        {
            var rest = buffer.AsMemory(0, count);
            for (var end = rest.Span.IndexOf((byte)0); end >= 0; end = rest.Span.IndexOf((byte)0))
            {
                pending.Write(rest.Span[..end]);
                Take(pending.GetBuffer().AsMemory(0, (int)pending.Length));
                pending = new MemoryStream();
                rest = rest[(end + 1)..];
            }

            pending.Write(rest.Span);
        }
    }

    private void Take(ReadOnlyMemory<byte> json)
    {
        var message = JsonDocument.Parse(json).RootElement;
        if (!message.TryGetProperty("id", out var id) || !_waiting.TryRemove(id.GetInt32(), out var waiting))
        {
            return;
        }

        if (message.TryGetProperty("error", out var error))
        {
            waiting.TrySetException(new PrintException($"the browser refused: {error.GetProperty("message").GetString()}"));
        }
        else
        {
            waiting.TrySetResult(message.GetProperty("result"));
        }
    }

    private void RemoveProfile()
    {
        try
        {
            _profile.Delete(recursive: true);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // A child of the browser still writes to it; the system's own cleaning of temporary files takes it.
        }
    }

    private static PrintException Gone() => new("the browser ended before the page was printed");
}
