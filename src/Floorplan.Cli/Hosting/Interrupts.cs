using System.Runtime.InteropServices;

namespace Floorplan.Cli.Hosting;

/// <summary>Ctrl+C, and the system asking the program to end, as a wish to stop that the work in hand may finish first.</summary>
internal sealed class Interrupts : IDisposable
{
    private readonly CancellationTokenSource source = new();
    private readonly List<PosixSignalRegistration> registrations;

    public Interrupts() => registrations =
        [PosixSignalRegistration.Create(PosixSignal.SIGINT, Stop), PosixSignalRegistration.Create(PosixSignal.SIGTERM, Stop)];

    public CancellationToken Wish => source.Token;

    public void Dispose()
    {
        registrations.ForEach(r => r.Dispose());
        source.Dispose();
    }

    private void Stop(PosixSignalContext context)
    {
        context.Cancel = true;
        source.Cancel();
    }
}
