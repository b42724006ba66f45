//! What goes through the pipes, in frames. An order is three: seconds, options, music. A reply is two: a byte that says how it
//! went, and the drawing.

use std::io::{self, ErrorKind, Read, Write};

use arcata_engrave::{EngravingOrder, PressError};

use crate::frame::{frame_text, read_frame, write_frame};

/// How it went, in the first frame of a reply.
const DRAWN: u8 = 0;
const REFUSED: u8 = 1;
const NO_FONTS: u8 = 2;

/// Writes an order and sends it off.
///
/// # Errors
/// A pipe that is broken.
pub fn write_order(out: &mut impl Write, order: &EngravingOrder) -> io::Result<()> {
    write_frame(out, &order.seconds.to_le_bytes())?;
    write_frame(out, order.options.as_bytes())?;
    write_frame(out, order.musicxml.as_bytes())?;
    out.flush()
}

/// Reads an order; none where the pipe ends before one.
///
/// ```
/// use arcata_engrave::EngravingOrder;
/// use arcata_workers::protocol::{read_order, write_order};
///
/// let order = EngravingOrder { options: "{}".into(), musicxml: "<score-partwise/>".into(), seconds: 60 };
/// let mut pipe = Vec::new();
/// write_order(&mut pipe, &order)?;
/// let mut pipe = pipe.as_slice();
/// assert_eq!(read_order(&mut pipe)?, Some(order));
/// assert_eq!(read_order(&mut pipe)?, None);
/// # Ok::<(), std::io::Error>(())
/// ```
///
/// # Errors
/// A pipe that breaks inside an order, and bytes that are none.
pub fn read_order(input: &mut impl Read) -> io::Result<Option<EngravingOrder>> {
    let seconds = match read_frame(input) {
        Ok(bytes) => bytes,
        Err(problem) if problem.kind() == ErrorKind::UnexpectedEof => return Ok(None),
        Err(problem) => return Err(problem),
    };
    let seconds = seconds.try_into().map(u64::from_le_bytes).map_err(|_| ErrorKind::InvalidData)?;
    Ok(Some(EngravingOrder {
        seconds,
        options: frame_text(read_frame(input)?)?,
        musicxml: frame_text(read_frame(input)?)?,
    }))
}

/// Writes what became of an order.
///
/// # Errors
/// A pipe that is broken.
pub fn write_reply(out: &mut impl Write, reply: &Result<String, PressError>) -> io::Result<()> {
    let (how, drawing) = match reply {
        Ok(drawing) => (DRAWN, drawing.as_str()),
        Err(PressError::NoFonts) => (NO_FONTS, ""),
        Err(_) => (REFUSED, ""),
    };
    write_frame(out, &[how])?;
    write_frame(out, drawing.as_bytes())?;
    out.flush()
}

/// Reads what became of an order.
///
/// # Errors
/// A pipe that ends or breaks, and bytes that are no reply.
pub fn read_reply(input: &mut impl Read) -> io::Result<Result<String, PressError>> {
    let how = read_frame(input)?;
    let drawing = frame_text(read_frame(input)?)?;
    match how.as_slice() {
        [DRAWN] => Ok(Ok(drawing)),
        [REFUSED] => Ok(Err(PressError::Refused)),
        [NO_FONTS] => Ok(Err(PressError::NoFonts)),
        _ => Err(ErrorKind::InvalidData.into()),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn replies_come_as_they_were_sent_and_nothing_else_is_one() {
        for reply in [Ok("<svg/>".to_owned()), Err(PressError::Refused), Err(PressError::NoFonts)] {
            let mut pipe = Vec::new();
            write_reply(&mut pipe, &reply).unwrap();
            assert_eq!(read_reply(&mut pipe.as_slice()).unwrap(), reply);
            for cut in 0..pipe.len() {
                assert!(read_reply(&mut &pipe[..cut]).is_err(), "{cut}");
            }
        }
        assert!(read_reply(&mut [1, 0, 0, 0, 9, 0, 0, 0, 0].as_slice()).is_err());
        assert!(read_reply(&mut [255; 9].as_slice()).is_err());
    }
}
