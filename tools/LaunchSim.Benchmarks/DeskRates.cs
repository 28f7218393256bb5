using System.Diagnostics;
using System.Globalization;
using System.Net.WebSockets;
using System.Text;
using System.Text.Json;
using LaunchSim.Web.Desk;

namespace LaunchSim.Benchmarks;

/// <summary>
/// The live desk under a hand that never rests: fifty changes a second for minutes, over a real socket. How long answers take,
/// whether they come in order, and what memory does.
/// </summary>
internal static class DeskRates
{
    private const double Rate = 50, WarmUpSeconds = 5;

    public static int Run(string file, double minutes)
    {
        string full = Path.GetFullPath(file);
        if (!File.Exists(full))
        {
            Console.Error.WriteLine($"found no file `{file}`");
            return 2;
        }

        return RunAsync(full, minutes).GetAwaiter().GetResult();
    }

    private static async Task<int> RunAsync(string file, double minutes)
    {
        await using DeskServer server = await DeskServer.StartAsync(new DeskSettings { Folder = Path.GetDirectoryName(file)!, File = Path.GetFileName(file), Log = Console.Error, Program = "benchmark" });
        using var socket = new ClientWebSocket();
        socket.Options.SetRequestHeader("Origin", $"http://127.0.0.1:{server.Port}");
        string token = server.Address[(server.Address.IndexOf("token=", StringComparison.Ordinal) + 6)..];
        await socket.ConnectAsync(new Uri($"ws://127.0.0.1:{server.Port}/live?file={Uri.EscapeDataString(Path.GetFileName(file))}&token={token}"), CancellationToken.None);
        var client = new Client(socket);
        await client.MoveAsync(WarmUpSeconds, null);
        client.Forget();
        double before = Settled(), setBefore = WorkingSet();
        long collections = GC.CollectionCount(2);
        await client.MoveAsync(60 * minutes, (minute, answered) =>
            Console.Error.WriteLine(string.Create(CultureInfo.InvariantCulture, $"minute {minute}: {answered} answers, {GC.GetTotalMemory(false) / 1e6:0.0} MB managed, {WorkingSet():0} MB working set")));
        double setAfter = WorkingSet(), after = Settled();
        double[] times = client.Times();
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"{{\"minutes\": {minutes:0.##}, \"asked\": {client.Asked}, \"answered\": {client.Answered}, \"refused\": {client.Refused}, \"out_of_order\": {client.Disordered}, \"last_answered\": {(client.HasLast ? "true" : "false")}, "
            + $"\"answer_ms_p50\": {At(times, 0.5):0.0}, \"answer_ms_p95\": {At(times, 0.95):0.0}, \"answer_ms_p99\": {At(times, 0.99):0.0}, \"answer_ms_most\": {At(times, 1):0.0}, \"answer_bytes\": {client.Bytes}, "
            + $"\"managed_mb_before\": {before:0.00}, \"managed_mb_after\": {after:0.00}, \"working_set_mb_before\": {setBefore:0}, \"working_set_mb_after\": {setAfter:0}, \"full_collections\": {GC.CollectionCount(2) - collections}}}"));
        return client is { Refused: 0, Disordered: 0, HasLast: true } ? 0 : 1;
    }

    private static double At(double[] sorted, double share) => sorted.Length == 0 ? double.NaN : sorted[(int)Math.Min(sorted.Length - 1, share * sorted.Length)];

    private static double WorkingSet() => Environment.WorkingSet / 1e6;

    private static double Settled()
    {
        for (int i = 0; i < 3; i++)
        {
            GC.Collect(GC.MaxGeneration, GCCollectionMode.Forced, blocking: true, compacting: true);
            GC.WaitForPendingFinalizers();
        }

        return GC.GetTotalMemory(true) / 1e6;
    }

    /// <summary>A browser that moves and looks at the numbers of what it is told.</summary>
    private sealed class Client(ClientWebSocket socket)
    {
        // The edits go round: what has no answer by then was passed over long ago.
        private const int Remembered = 1 << 12;

        private readonly long[] _sent = new long[Remembered];
        private readonly List<float> _times = [];
        private long _number, _last;

        public long Asked { get; private set; }

        public long Answered { get; private set; }

        public long Refused { get; private set; }

        public long Disordered { get; private set; }

        public int Bytes { get; private set; }

        public bool HasLast => _hasLast;

        public double[] Times()
        {
            double[] times = [.. _times];
            Array.Sort(times);
            return times;
        }

        public void Forget()
        {
            (Asked, Answered, Refused, Disordered) = (0, 0, 0, 0);
            _times.Clear();
        }

        public async Task MoveAsync(double seconds, Action<int, long>? minute)
        {
            using var stop = new CancellationTokenSource();
            Task reading = ReadAsync(stop.Token);
            var watch = Stopwatch.StartNew();
            int minutes = 0;
            for (int i = 0; watch.Elapsed.TotalSeconds < seconds; i++)
            {
                long number = ++_number;
                Asked++;
                Volatile.Write(ref _sent[number % Remembered], Stopwatch.GetTimestamp());
                string text = string.Create(CultureInfo.InvariantCulture, $"{{\"ask\":\"solve\",\"number\":{number},\"edits\":[{{\"path\":\"car.ride_height.rear\",\"value\":\"{(i % 40) * 0.01:0.00} in\"}},{{\"path\":\"car.ride_height.front\",\"value\":\"{(i % 7) * 0.05:0.00} in\"}}]}}");
                await socket.SendAsync(Encoding.UTF8.GetBytes(text), WebSocketMessageType.Text, true, CancellationToken.None);
                if (minute is not null && (int)(watch.Elapsed.TotalSeconds / 60) > minutes)
                {
                    minute(++minutes, Answered);
                }

                double due = ((i + 1) / Rate) - watch.Elapsed.TotalSeconds;
                if (due > 0)
                {
                    await Task.Delay(TimeSpan.FromSeconds(due));
                }
            }

            for (int i = 0; i < 200 && Volatile.Read(ref _last) < _number; i++)
            {
                await Task.Delay(50);
            }

            // Something else is asked, whose answer ends the reading: the next round goes on with the same socket.
            _hasLast = Volatile.Read(ref _last) == _number;
            byte[] end = Encoding.UTF8.GetBytes(string.Create(CultureInfo.InvariantCulture, $"{{\"ask\":\"pin\",\"number\":{++_number},\"edits\":null}}"));
            await socket.SendAsync(end, WebSocketMessageType.Text, true, CancellationToken.None);
            await reading.WaitAsync(TimeSpan.FromSeconds(10));
        }

        private bool _hasLast;

        private async Task ReadAsync(CancellationToken stop)
        {
            byte[] buffer = new byte[1 << 20];
            int length = 0;
            while (true)
            {
                ValueWebSocketReceiveResult got = await socket.ReceiveAsync(buffer.AsMemory(length), stop);
                length += got.Count;
                if (got.MessageType == WebSocketMessageType.Close)
                {
                    throw new InvalidOperationException($"The desk closed the socket: {socket.CloseStatusDescription}");
                }

                if (length == buffer.Length)
                {
                    Array.Resize(ref buffer, 2 * length);
                }

                if (got.EndOfMessage)
                {
                    if (!Take(buffer.AsSpan(0, length)))
                    {
                        return;
                    }

                    length = 0;
                }
            }
        }

        private bool Take(ReadOnlySpan<byte> text)
        {
            // Kind and number come first in every message.
            var reader = new Utf8JsonReader(text, isFinalBlock: true, default);
            _ = reader.Read() && reader.Read() && reader.Read();
            string kind = reader.GetString()!;
            _ = reader.Read();
            long number = reader.ValueTextEquals("number"u8) && reader.Read() ? reader.GetInt64() : 0;
            if (kind == "pinned")
            {
                return false;
            }

            Refused += kind == "refused" ? 1 : 0;
            if (kind == "launch")
            {
                Answered++;
                Bytes = text.Length;
                Disordered += number <= _last ? 1 : 0;
                _times.Add((float)Stopwatch.GetElapsedTime(Volatile.Read(ref _sent[number % Remembered])).TotalMilliseconds);
                Volatile.Write(ref _last, number);
            }

            return true;
        }
    }
}
