using Finwright;
using Finwright.Terminal;

using CancellationTokenSource stop = new();
Console.CancelKeyPress += (_, pressed) =>
{
    // The first Ctrl-C lets the command put everything away; the second ends the process at once.
    if (stop.IsCancellationRequested)
        return;
    pressed.Cancel = true;
    stop.Cancel();
};
return (int)CommandLine.Run(args, TextStreams.OfProcess(), stop.Token);
