using System.Buffers;
using System.IO.MemoryMappedFiles;
using System.Runtime.InteropServices;
using IfcCourser.Findings;
using Microsoft.Win32.SafeHandles;

namespace IfcCourser.Step21;

/// <summary>
/// The bytes of a file, addressed by 64-bit offsets; files may be larger than 2 GB. Files up to half a gigabyte are read into memory, so that
/// whatever is done to them afterwards does not matter; larger ones are mapped.
/// </summary>
internal sealed unsafe class StepBytes : IDisposable
{
    private const long MostRead = 1L << 29;

    private readonly byte* _start;
    private readonly byte* _owned;
    private readonly MemoryMappedFile? _file;
    private readonly MemoryMappedViewAccessor? _view;
    private readonly MappedPages? _pages;
    private MemoryHandle _pin;
    private bool _isDisposed;

    private StepBytes(MemoryMappedFile file, MemoryMappedViewAccessor view, long length)
    {
        _file = file;
        _view = view;
        Length = length;
        view.SafeMemoryMappedViewHandle.AcquirePointer(ref _start);
        _pages = new MappedPages((nint)_start, length);
    }

    private StepBytes(byte* owned, long length)
    {
        _owned = owned;
        _start = owned;
        Length = length;
    }

    private StepBytes(ReadOnlyMemory<byte> memory)
    {
        _pin = memory.Pin();
        _start = (byte*)_pin.Pointer;
        Length = memory.Length;
    }

    public long Length { get; }

    public static StepBytes Of(ReadOnlyMemory<byte> memory) => new(memory);

    public static Outcome<StepBytes> Open(string path)
    {
        if (Directory.Exists(path))
        {
            return new Fault(path, null, null, "this is a folder, not a file", "Name the model file.");
        }

        try
        {
            if (InputFile.Empty(path) is { } fault)
            {
                return fault;
            }

            using var handle = File.OpenHandle(path);
            var length = RandomAccess.GetLength(handle);
            if (length <= MostRead)
            {
                return Read(path, handle, length);
            }

            var file = MemoryMappedFile.CreateFromFile(path, FileMode.Open, null, 0, MemoryMappedFileAccess.Read);
            return new StepBytes(file, file.CreateViewAccessor(0, 0, MemoryMappedFileAccess.Read), length);
        }
        catch (Exception e) when (e is FileNotFoundException or DirectoryNotFoundException)
        {
            return new Fault(path, null, null, "there is no such file", "Check the path.");
        }
        catch (UnauthorizedAccessException)
        {
            return new Fault(path, null, null, "the file may not be read", "Check the file's permissions.");
        }
        catch (Exception e) when (e is IOException or NotSupportedException)
        {
            return new Fault(path, null, null, "the file can't be opened", "Close programs that use it, or copy it elsewhere.");
        }
    }

    private ReadOnlySpan<byte> Span(long offset, int length)
    {
        ObjectDisposedException.ThrowIf(_isDisposed, this);
        ArgumentOutOfRangeException.ThrowIfNegative(offset);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(offset, Length - length);
        return new ReadOnlySpan<byte>(_start + offset, length);
    }

    /// <summary>The whole file; a fault where it was written to meanwhile.</summary>
    private static Outcome<StepBytes> Read(string path, SafeFileHandle handle, long length)
    {
        var written = File.GetLastWriteTimeUtc(handle);
        var memory = (byte*)NativeMemory.Alloc((nuint)length);
        var isWhole = false;
        try
        {
            isWhole = Fill(memory, handle, length) && RandomAccess.GetLength(handle) == length && File.GetLastWriteTimeUtc(handle) == written;
        }
        finally
        {
            if (!isWhole)
            {
                NativeMemory.Free(memory);
            }
        }

        if (!isWhole)
        {
            return new Fault(path, null, null, "the file was written to while it was read", "Wait until it is whole, then run again.");
        }

        return new StepBytes(memory, length);
    }

    /// <summary>False where the file ends before the length.</summary>
    private static bool Fill(byte* memory, SafeFileHandle handle, long length)
    {
        const int Chunk = 1 << 24;
        long at = 0;
        for (var read = -1; at < length && read != 0; at += read)
        {
            read = RandomAccess.Read(handle, new Span<byte>(memory + at, (int)Math.Min(Chunk, length - at)), at);
        }

        return at == length;
    }

    /// <summary>The bytes from an offset on, as far as one span reaches; who reads on for long tells <see cref="Passed"/>.</summary>
    public ReadOnlySpan<byte> From(long offset)
    {
        _pages?.See(offset, 0);
        return Span(offset, (int)Math.Min(Length - offset, int.MaxValue));
    }

    public ReadOnlySpan<byte> Slice(long offset, int length)
    {
        _pages?.See(offset, length);
        return Span(offset, length);
    }

    /// <summary>Tells that what was read so far is not needed soon.</summary>
    public void Passed() => _pages?.GiveBack();

    public void Dispose()
    {
        if (_isDisposed)
        {
            return;
        }

        _isDisposed = true;
        _view?.SafeMemoryMappedViewHandle.ReleasePointer();
        _view?.Dispose();
        _file?.Dispose();
        _pin.Dispose();
        NativeMemory.Free(_owned);
    }
}
