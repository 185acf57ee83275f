// A real picture of 8 × 6 grey points, and the same as a phone writes it: with a place and a camera inside.

export const greyJpeg = Buffer.from(
  '/9j/4AAQSkZJRgABAQAAAQABAAD/2wBDABsSFBcUERsXFhceHBsgKEIrKCUlKFE6PTBCYFVlZF9VXVtqeJmBanGQc1tdhbWGkJ6jq62rZ4C8ybqmx5moq6T/wAALCAAGAAgBAREA/8QAFAABAAAAAAAAAAAAAAAAAAAAAf/EABQQAQAAAAAAAAAAAAAAAAAAAAD/2gAIAQEAAD8AH//Z',
  'base64',
);

function segment(marker: number, body: string): Buffer {
  const bytes = Buffer.from(body, 'latin1');
  return Buffer.concat([Buffer.from([0xff, marker, (bytes.length + 2) >> 8, (bytes.length + 2) & 255]), bytes]);
}

export const phoneJpeg = Buffer.concat([
  greyJpeg.subarray(0, 2),
  segment(0xe1, 'Exif\0\0II*\0 GPS 51.0447 N 114.0719 W, camera Heron 7'),
  segment(0xfe, 'taken by Tam Okoro'),
  greyJpeg.subarray(2),
]);
