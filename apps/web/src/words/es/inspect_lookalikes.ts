// Words of the identification help of Inspect, Spanish. Sources as beside the English ones.
import type { Words } from '../en';

export const lookalikes: Words['inspect']['lookalikes'] = {
  title: '¿Es una chinche de cama?',
  intro: 'Atrápela con cinta, ilumínela de lado, amplíela con la cámara.',
  memory: 'De memoria, por comprobar. Si de ello depende una decisión, decide un especialista.',
  sized: 'Tamaños: Instituto Noruego de Salud Pública. Lo demás de memoria, por comprobar.',
  tells: 'En qué se distinguen',
  scale: 'Dibujado por la forma, no a una misma escala.',
  kinds: [
    { key: 'bed_bug', name: 'Chinche de cama', size: '5 a 6 mm, huevo 1 mm', tells: 'Óvalo plano, seis patas, sin alas. Pelo corto en el escudo detrás de la cabeza, más corto que el ancho del ojo. Antena lenta, de cuatro partes.' },
    { key: 'bat_bug', name: 'Chinche de murciélago', size: '5 a 6 mm', tells: 'La misma forma. El pelo del escudo es más largo que el ancho del ojo. Murciélagos en el desván o la pared. Solo la lupa decide: envíela.' },
    { key: 'carpet_beetle', name: 'Larva de escarabajo de alfombra', size: '3 a 5 mm', tells: 'Gusano peludo y rayado con mechones al final, nunca plano. Deja mudas con cerdas; come lana, no pica a nadie.' },
    { key: 'booklouse', name: 'Piojo de los libros', size: '1 a 2 mm', tells: 'Pálido y blando como una ninfa pequeña, pero con cabeza grande, antenas largas como hilos y cintura. Vive donde hay humedad.' },
    { key: 'cockroach', name: 'Ninfa de cucaracha', size: '3 mm y más', tells: 'Antenas tan largas como el cuerpo, dos colas al final, corre rápido. La cabeza se esconde bajo el escudo.' },
    { key: 'spider_beetle', name: 'Escarabajo araña', size: '2 a 4 mm', tells: 'Redondo y brillante como una gota de sangre; el caparazón es duro y no se aplana. Las patas parecen largas, como de araña.' },
    { key: 'flea', name: 'Pulga', size: '2 a 3 mm', tells: 'Plana de lado a lado, no desde arriba. Salta. Patas traseras fuertes. Donde se echan las mascotas.' },
    { key: 'tick', name: 'Garrapata', size: '2 a 5 mm', tells: 'Ocho patas de adulta, sin antenas, un solo cuerpo sin anillos. Se clava en la piel.' },
  ],
};
