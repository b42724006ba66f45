//! Frames: four bytes for the length, the lowest first, and the bytes.

use std::io::{self, ErrorKind, Read, Write};

/// No frame is longer: a symphony's part has a few megabytes (a limit).
const LONGEST: usize = 512 << 20;

/// Writes a frame.
///
/// # Errors
/// A pipe that is broken, and more bytes than a length holds.
pub fn write_frame(out: &mut impl Write, bytes: &[u8]) -> io::Result<()> {
    let length = u32::try_from(bytes.len()).map_err(|_| io::Error::from(ErrorKind::InvalidInput))?;
    out.write_all(&length.to_le_bytes())?;
    out.write_all(bytes)
}

/// Reads a frame.
///
/// ```
/// use arcata_workers::{read_frame, write_frame};
///
/// let mut pipe = Vec::new();
/// write_frame(&mut pipe, "arco".as_bytes())?;
/// assert_eq!(read_frame(&mut pipe.as_slice())?, b"arco");
/// assert!(read_frame(&mut &pipe[..6]).is_err());
/// # Ok::<(), std::io::Error>(())
/// ```
///
/// # Errors
/// A pipe that ends or breaks before its end, and a length that no frame has.
pub fn read_frame(input: &mut impl Read) -> io::Result<Vec<u8>> {
    let mut length = [0; 4];
    input.read_exact(&mut length)?;
    let length = u32::from_le_bytes(length) as usize;
    if length > LONGEST {
        return Err(ErrorKind::InvalidData.into());
    }
    let mut bytes = Vec::new();
    // Grows with what really comes.
    let read = input.take(length as u64).read_to_end(&mut bytes)?;
    if read == length { Ok(bytes) } else { Err(ErrorKind::UnexpectedEof.into()) }
}

/// The bytes of a frame as text.
///
/// # Errors
/// Bytes that are none.
pub fn frame_text(bytes: Vec<u8>) -> io::Result<String> {
    String::from_utf8(bytes).map_err(|_| ErrorKind::InvalidData.into())
}
